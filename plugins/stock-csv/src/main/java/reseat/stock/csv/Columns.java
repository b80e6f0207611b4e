package reseat.stock.csv;

import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import reseat.files.SettingsFile;
import reseat.model.BadInputException;
import reseat.model.Origin;
import reseat.model.Problem;
import reseat.stock.StockItem;

/**
 * The meaning of the columns of a spreadsheet, and the format of their cells.
 *
 * @param names for each field of a line, the headings of its columns
 * @param kinds meaning of the shop's words for kinds
 * @param kind the kind of lines that name none
 * @param units meaning of the shop's words for units
 * @param unit the unit of lines that name none
 * @param separators what may separate cells; tried in this order
 * @param decimal the decimal separator
 * @param dates how dates are written; tried in this order
 * @param charset how the file is encoded, unless it begins with a byte order mark
 * @param between what separates several numbers in one cell
 */
record Columns(
        Map<String, List<String>> names,
        Map<String, StockItem.Kind> kinds,
        Optional<StockItem.Kind> kind,
        Map<String, String> units,
        String unit,
        List<Character> separators,
        char decimal,
        List<DateTimeFormatter> dates,
        Charset charset,
        Pattern between) {

    static final List<String> THINGS =
            List.of("id", "kind", "name", "serves", "quantity", "unit", "lot", "expires", "place");

    private static final List<String> KNOWN =
            Stream.concat(
                            THINGS.stream().map(thing -> "columns/" + thing),
                            Stream.of(
                                    "kinds/*",
                                    "kind",
                                    "units/*",
                                    "unit",
                                    "separator",
                                    "decimal",
                                    "dates",
                                    "charset",
                                    "between"))
                    .toList();

    /** Reads a mapping; see core/docs/stock.md. */
    static Columns read(Path file) throws BadInputException {
        return new Reader(SettingsFile.read(file)).read();
    }

    List<String> headings(String thing) {
        return names.getOrDefault(thing, List.of());
    }

    /** Returns a kind by its keyword. */
    static Optional<StockItem.Kind> kindNamed(String word) {
        return Stream.of(StockItem.Kind.values())
                .filter(kind -> kind.name().toLowerCase(Locale.ROOT).equals(word))
                .findFirst();
    }

    private static final class Reader {
        private final SettingsFile file;
        private final List<Problem> problems;

        Reader(SettingsFile file) {
            this.file = file;
            this.problems = new ArrayList<>(file.unknown(KNOWN));
        }

        Columns read() throws BadInputException {
            Map<String, List<String>> names = new LinkedHashMap<>();
            for (String thing : THINGS) {
                List<String> headings =
                        file.all("columns", thing).stream().map(SettingsFile.Entry::text).toList();
                if (!headings.isEmpty()) {
                    names.put(thing, headings);
                }
                if (headings.size() > 1 && !thing.equals("serves")) {
                    problem(
                            file.first("columns", thing),
                            "columns/" + thing + " must name one column");
                }
            }
            for (String needed : List.of("id", "quantity")) {
                if (!names.containsKey(needed)) {
                    problem(Optional.empty(), "\"columns/" + needed + "\" is missing");
                }
            }
            Map<String, StockItem.Kind> kinds = new LinkedHashMap<>();
            file.below("kinds")
                    .forEach((word, entry) -> kind(entry).ifPresent(kind -> kinds.put(word, kind)));
            Optional<StockItem.Kind> kind = file.first("kind").flatMap(this::kind);
            if (!names.containsKey("kind") && file.first("kind").isEmpty()) {
                problem(
                        Optional.empty(),
                        "\"columns/kind\" is missing; if all lines are of one kind, give it as"
                                + " \"kind\"");
            }
            Map<String, String> units = new LinkedHashMap<>();
            file.below("units").forEach((word, entry) -> units.put(word, entry.text()));
            Columns columns =
                    new Columns(
                            names,
                            kinds,
                            kind,
                            units,
                            file.text("unit").orElse("piece"),
                            separators(),
                            decimal(),
                            dates(),
                            charset(),
                            Pattern.compile(
                                    Pattern.quote(file.text("between").orElse("|")) + "|\\R"));
            if (!problems.isEmpty()) {
                throw new BadInputException(problems);
            }
            return columns;
        }

        private Optional<StockItem.Kind> kind(SettingsFile.Entry entry) {
            Optional<StockItem.Kind> kind = kindNamed(entry.text());
            if (kind.isEmpty()) {
                expected(entry, "part, screw, consumable or tool");
            }
            return kind;
        }

        private List<Character> separators() {
            Optional<SettingsFile.Entry> given = file.first("separator");
            if (given.isEmpty()) {
                return List.of(';', ',', '\t', '|');
            }
            String text = given.get().text();
            if (text.equals("tab")) {
                return List.of('\t');
            }
            if (text.length() != 1) {
                expected(given.get(), "one character, or tab");
            }
            return List.of(text.isEmpty() ? ';' : text.charAt(0));
        }

        private char decimal() {
            Optional<SettingsFile.Entry> given = file.first("decimal");
            String text = given.map(SettingsFile.Entry::text).orElse(".");
            if (!text.equals(".") && !text.equals(",")) {
                expected(given.orElseThrow(), "\".\" or \",\"");
            }
            return text.equals(",") ? ',' : '.';
        }

        private List<DateTimeFormatter> dates() {
            List<DateTimeFormatter> formats = new ArrayList<>();
            for (SettingsFile.Entry entry : file.all("dates")) {
                try {
                    formats.add(format(entry.text()));
                } catch (IllegalArgumentException e) {
                    expected(entry, "a date such as dd.MM.yyyy");
                }
            }
            return formats.isEmpty() ? List.of(format("yyyy-MM-dd")) : formats;
        }

        /** Years without an era, so that 31 April is rejected instead of adjusted. */
        private static DateTimeFormatter format(String pattern) {
            return DateTimeFormatter.ofPattern(pattern.replace('y', 'u'), Locale.ROOT)
                    .withResolverStyle(ResolverStyle.STRICT);
        }

        private Charset charset() {
            Optional<SettingsFile.Entry> given = file.first("charset");
            try {
                return given.isPresent()
                        ? Charset.forName(given.get().text())
                        : StandardCharsets.UTF_8;
            } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
                expected(given.orElseThrow(), "UTF-8, windows-1252 or another encoding");
                return StandardCharsets.UTF_8;
            }
        }

        private void expected(SettingsFile.Entry entry, String what) {
            problems.add(
                    Problem.error(entry.at(), "found \"" + entry.text() + "\", expected " + what));
        }

        private void problem(Optional<SettingsFile.Entry> entry, String message) {
            problems.add(
                    Problem.error(
                            entry.map(SettingsFile.Entry::at).orElse(new Origin(file.file(), 0, 0)),
                            message));
        }
    }
}
