package reseat.internal.fasten;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import reseat.fasten.Drive;
import reseat.fasten.FastenerInputException;
import reseat.fasten.FastenerTable;
import reseat.fasten.FastenerTables;
import reseat.fasten.HeadSize;
import reseat.fasten.ScrewThread;
import reseat.fasten.TableRow;
import reseat.fasten.TorqueRequest;
import reseat.model.Seat;
import reseat.text.Nearest;
import reseat.text.NumberText;

/** Reads "M1.6 8.8 pan T5 into magnesium, 3 mm, oiled". */
public final class RequestText {

    private static final Pattern LENGTH =
            Pattern.compile(
                    "([+-]?\\d+(?:[.,]\\d+)?)\\s*(mm|cm|in|m|um|µm)(?=\\s|,|$)",
                    Pattern.CASE_INSENSITIVE);

    private static final Pattern NEXT_WORD = Pattern.compile("[\\s,;]*([^\\s,;]+)");

    /** The longest screws in portable equipment are a tenth as long. */
    private static final double GREATEST_MM = 1000;

    private final FastenerTables tables;
    private final TorqueRequest.Builder request = TorqueRequest.builder();
    private Optional<ScrewThread> thread = Optional.empty();
    private Optional<String> head = Optional.empty();
    private Optional<Drive> drive = Optional.empty();
    private OptionalDouble headMm = OptionalDouble.empty();
    private boolean into;
    private boolean on;
    private boolean inBrass;
    private boolean engaged;
    private final Map<String, String> told = new HashMap<>();

    private RequestText(FastenerTables tables) {
        this.tables = tables;
    }

    /** Parses a text; cautious assumptions are allowed and will be listed. */
    public static TorqueRequest read(FastenerTables tables, String text) {
        return new RequestText(tables).run(text);
    }

    private TorqueRequest run(String text) {
        // lengths first, joined to one word, so that "8.8" stays a class and "8.8 mm" a length
        String glued =
                LENGTH.matcher(text)
                        .replaceAll(
                                m ->
                                        Matcher.quoteReplacement(
                                                preposition(m, text)
                                                        ? m.group()
                                                        : m.group(1).replace(',', '.')
                                                                + m.group(2)));
        List<String> words = new ArrayList<>();
        for (String word : Names.items(glued.replaceAll("[\\s;]+", ","))) {
            if (!word.isEmpty()) {
                words.add(word);
            }
        }
        for (int i = 0; i < words.size(); i++) {
            if (words.get(i).equalsIgnoreCase("head")
                    && i + 1 < words.size()
                    && length(words.get(i + 1)).isPresent()) {
                headMm = length(words.get(++i));
            } else {
                word(words.get(i));
            }
        }
        thread.ifPresent(this::head);
        return request.assumeCautiously().build();
    }

    /** Returns whether the "in" of "8.8 in magnesium" is not an inch. */
    private boolean preposition(MatchResult m, String text) {
        Matcher next = NEXT_WORD.matcher(text.substring(m.end()));
        return m.group(2).equalsIgnoreCase("in")
                && has(FastenerTable.CLASSES, m.group(1))
                && next.lookingAt()
                && has(FastenerTable.MATERIALS, next.group(1));
    }

    /**
     * Records that something was given; a second word for it is an error, not a silent override.
     */
    private void once(String what, String word) {
        String before = told.putIfAbsent(what, word);
        if (before != null) {
            throw new FastenerInputException(
                    "A second " + what + " \"" + word + "\" beside \"" + before + "\".");
        }
    }

    private void word(String word) {
        OptionalDouble length = length(word);
        if (length.isPresent()) {
            engagement(word, length.getAsDouble());
        } else if (word.equalsIgnoreCase("into") || word.equalsIgnoreCase("in")) {
            into = true;
        } else if (word.equalsIgnoreCase("on")) {
            on = true;
        } else if (on && has(FastenerTable.MATERIALS, word)) {
            once("material under the head", word);
            on = false;
            request.clamped(tables.material(word));
        } else if (inBrass && has(FastenerTable.MATERIALS, word)) {
            once("material around the insert", word);
            request.around(tables.material(word));
        } else if (word.equalsIgnoreCase("class")
                || word.equalsIgnoreCase("deep")
                || word.equalsIgnoreCase("head")) {
            return;
        } else if (ThreadNames.looksLikeOne(word)) {
            once("thread", word);
            thread = Optional.of(tables.thread(word));
            request.thread(thread.get());
        } else if (has(FastenerTable.MATERIALS, word)
                && (into
                        || told.containsKey("property class")
                        || !has(FastenerTable.CLASSES, word))) {
            once("material", word);
            into = false;
            inBrass = tables.material(word).group().equals("brass");
            request.material(tables.material(word));
        } else if (has(FastenerTable.CLASSES, word)) {
            once("property class", word);
            request.strength(tables.strengthClass(word));
        } else if (form(word).isPresent()) {
            once("form of seat", word);
            request.form(form(word).get());
        } else if (has(FastenerTable.FRICTION, word)) {
            once("friction", word);
            request.friction(tables.friction(word));
        } else if (has(FastenerTable.HEAD_FORMS, word)) {
            once("head", word);
            head = Optional.of(word);
        } else if (tables.drives().find(word).isPresent()) {
            once("drive", word);
            drive = tables.drives().find(word);
            request.drive(drive.get());
        } else {
            throw unknown(word);
        }
    }

    private void engagement(String word, double mm) {
        if (engaged) {
            throw new FastenerInputException(
                    "A second length \""
                            + word
                            + "\"; write \"head 3.2 mm\" for the diameter of the head.");
        }
        engaged = true;
        if (mm > GREATEST_MM) {
            throw new FastenerInputException(
                    "An engagement of \""
                            + word
                            + "\" is too long for any screw; the maximum is "
                            + NumberText.mm(GREATEST_MM)
                            + ".");
        }
        request.engagementMm(mm);
        if (!(mm > 0)) {
            throw new FastenerInputException(
                    "The engagement must be above 0 mm; found \"" + word + "\".");
        }
    }

    private void head(ScrewThread screw) {
        String form = head.orElse("pan");
        if (tables.bearing(form) == HeadSize.Bearing.NONE) {
            // set screws: no head, no size
            request.head(tables.headSize(form, headMm.orElse(screw.diameterMm())));
        } else if (headMm.isPresent()) {
            request.head(tables.headSize(form, headMm.getAsDouble()));
        } else if (head.isPresent()) {
            request.head(
                    tables.headSize(form, screw, drive)
                            .orElseThrow(
                                    () ->
                                            new FastenerInputException(
                                                    "No table has the size of a "
                                                            + form
                                                            + " head of "
                                                            + screw.designation()
                                                            + "; give its diameter,"
                                                            + " such as \"head 3.2 mm\".")));
        }
    }

    private static Optional<Seat.Form> form(String word) {
        for (Seat.Form form : Seat.Form.values()) {
            if (form.name().equalsIgnoreCase(word)) {
                return Optional.of(form);
            }
        }
        return Optional.empty();
    }

    private static OptionalDouble length(String word) {
        Matcher m = LENGTH.matcher(word);
        if (!m.matches()) {
            return OptionalDouble.empty();
        }
        double number = Double.parseDouble(m.group(1).replace(',', '.'));
        double factor =
                switch (m.group(2).toLowerCase(Locale.ROOT)) {
                    case "mm" -> 1;
                    case "cm" -> 10;
                    case "in" -> 25.4;
                    case "m" -> 1000;
                    default -> 0.001;
                };
        return OptionalDouble.of(number * factor);
    }

    private boolean has(FastenerTable table, String word) {
        String column = table.columns().get(0).name();
        String low = word.toLowerCase(Locale.ROOT);
        return tables.rows(table).stream()
                .anyMatch(
                        row ->
                                row.text(column).equalsIgnoreCase(word)
                                        || Names.items(
                                                        row.cells()
                                                                .getOrDefault("alias", "")
                                                                .toLowerCase(Locale.ROOT))
                                                .contains(low));
    }

    private FastenerInputException unknown(String word) {
        if (word.matches("(?i)[+-]?(nan|inf|infinity|∞)(mm|cm|in)?")) {
            return new FastenerInputException(
                    "\"" + word + "\" is not a number; expected a length such as 3 mm.");
        }
        if (word.matches("[+-]?\\d+([.,]\\d+)?")) {
            return new FastenerInputException(
                    "\""
                            + word
                            + "\" is not a property class, and a length needs a unit:"
                            + " mm, cm or in. Known classes: "
                            + Names.list(names(FastenerTable.CLASSES))
                            + ".");
        }
        if (word.matches("[+-]?\\d.*")) {
            return new FastenerInputException(
                    "\"" + word + "\" is not a length; its unit must be mm, cm or in.");
        }
        if (into) {
            return Names.unknown("material", word, names(FastenerTable.MATERIALS));
        }
        List<String> known = new ArrayList<>(names(FastenerTable.CLASSES));
        known.addAll(names(FastenerTable.HEAD_FORMS));
        known.addAll(names(FastenerTable.FRICTION));
        known.addAll(names(FastenerTable.MATERIALS));
        return new FastenerInputException(
                "\""
                        + word
                        + "\" is not a thread, class, head, drive, friction or material."
                        + Nearest.question(word, known)
                        + " Write, for example, \"M1.6 8.8 pan T5 into magnesium, 3 mm\".");
    }

    private List<String> names(FastenerTable table) {
        String column = table.columns().get(0).name();
        return tables.rows(table).stream().map((TableRow row) -> row.text(column)).toList();
    }
}
