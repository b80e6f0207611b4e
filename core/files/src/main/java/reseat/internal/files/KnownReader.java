package reseat.internal.files;

import static java.nio.charset.StandardCharsets.UTF_8;
import static reseat.internal.files.FormatParts.group;
import static reseat.internal.files.FormatParts.may;
import static reseat.internal.files.FormatParts.must;
import static reseat.internal.files.FormatParts.several;
import static reseat.internal.files.FormatParts.value;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import reseat.files.KnownFinding;
import reseat.internal.files.Scalars.ScalarType;
import reseat.model.BadInputException;
import reseat.model.Origin;
import reseat.model.Problem;
import reseat.text.QuoteText;

/** Reads files of accepted findings, and adds to them. */
public final class KnownReader {

    private static final String FORMAT = "reseat-known/1";

    private static final Shape.Group KNOWN =
            group(
                    "known",
                    List.of(
                            must("format", new Shape.Choice(List.of(FORMAT)), "The format."),
                            may(
                                    "known",
                                    several(
                                            group(
                                                    "entry",
                                                    List.of(
                                                            text("check"),
                                                            text("device"),
                                                            text("subject"),
                                                            text("reason"),
                                                            text("until")))),
                                    "The findings.")));

    private KnownReader() {}

    private static Shape.FormatKey text(String key) {
        return must(key, value(ScalarType.TEXT), "");
    }

    /** Reads a file; see {@code KnownFiles.read}. */
    public static List<KnownFinding> read(Path path) throws BadInputException {
        Problems problems = new Problems(path.toString());
        return entries(SmallFile.read(path, "known", KNOWN, problems), problems);
    }

    private static List<KnownFinding> parse(String name, String text) throws BadInputException {
        Problems problems = new Problems(name);
        return entries(
                SmallFile.parse(name, text.getBytes(UTF_8), "known", KNOWN, problems), problems);
    }

    private static List<KnownFinding> entries(Node.Fields fields, Problems problems)
            throws BadInputException {
        List<KnownFinding> entries = new ArrayList<>();
        Node known = fields.get("known");
        List<Node> items =
                known instanceof Node.Items list
                        ? list.items()
                        : known == null ? List.of() : List.of(known);
        for (Node item : items) {
            if (item instanceof Node.Fields entry) {
                entry(entry, problems).ifPresent(entries::add);
            }
        }
        if (problems.hasErrors()) {
            throw new BadInputException(problems.sorted());
        }
        return entries;
    }

    private static Optional<KnownFinding> entry(Node.Fields fields, Problems problems) {
        Look look = new Look(fields, fields.at());
        if (look.text("reason").filter(String::isBlank).isPresent()) {
            problems.error(look.at("reason"), "reason: found only spaces, expected the reason");
        }
        LocalDate until = LocalDate.MAX;
        if (look.has("until")) {
            try {
                until = LocalDate.parse(look.text("until", ""));
            } catch (DateTimeParseException e) {
                problems.error(
                        look.at("until"),
                        "until: found "
                                + QuoteText.of(look.text("until", ""))
                                + ", expected a date such as 2027-03-01");
            }
        }
        String reason = look.text("reason", "");
        return reason.isBlank()
                ? Optional.empty()
                : Optional.of(
                        new KnownFinding(
                                look.text("check", ""),
                                look.text("device", ""),
                                look.text("subject", ""),
                                reason,
                                until,
                                fields.at()));
    }

    /** Adds entries to a file; see {@code KnownFiles.add}. */
    public static void add(Path path, List<KnownFinding> more)
            throws BadInputException, IOException {
        String name = path.toString();
        String old = "";
        List<KnownFinding> all = new ArrayList<>();
        if (Files.exists(path) && Files.size(path) > 0) {
            all.addAll(read(path));
            old = Files.readString(path, UTF_8);
        }
        String text = added(name, old, more);
        all.addAll(more);
        if (!same(all, text, name)) {
            throw new BadInputException(
                    Problem.error(
                            new Origin(name, 0, 0),
                            "entries cannot be added at the end of this file: make"
                                    + " \"known\" its last"
                                    + " key, with one entry below the other, each"
                                    + " beginning with a dash"));
        }
        Path target = Files.exists(path) ? path.toRealPath() : path.toAbsolutePath();
        Path beside = target.resolveSibling(target.getFileName() + ".new");
        try {
            Files.writeString(beside, text, UTF_8);
            Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    private static String added(String name, String old, List<KnownFinding> more) {
        StringBuilder text = new StringBuilder(old.isBlank() ? head() : old);
        if (text.charAt(text.length() - 1) != '\n') {
            text.append('\n');
        }
        String indent = " ".repeat(indent(name, text.toString()));
        for (KnownFinding each : more) {
            text.append(indent).append("- check: ").append(scalar(each.check())).append('\n');
            line(text, indent, "device", scalar(each.device()));
            line(text, indent, "subject", scalar(each.subject()));
            line(text, indent, "reason", quoted(each.reason()));
            line(text, indent, "until", each.until().toString());
        }
        return text.toString();
    }

    private static String head() {
        return "# Known findings, accepted until the day given; see core/docs/checking.md.\n"
                + "format: "
                + FORMAT
                + "\nknown:\n";
    }

    private static void line(StringBuilder text, String indent, String key, String value) {
        text.append(indent).append("  ").append(key).append(": ").append(value).append('\n');
    }

    /** Returns the indentation of the entries' dashes; 2 if there are none yet. */
    private static int indent(String name, String text) {
        Node root = Trees.parse(name, text.getBytes(UTF_8), new Problems(name)).orElse(null);
        if (root instanceof Node.Fields fields
                && fields.get("known") instanceof Node.Items list
                && !list.items().isEmpty()) {
            String line =
                    text.lines()
                            .skip(list.items().get(0).at().line() - 1L)
                            .findFirst()
                            .orElse("  -");
            int dash = line.indexOf('-');
            return dash >= 0 && line.substring(0, dash).isBlank() ? dash : 2;
        }
        return 2;
    }

    private static boolean same(List<KnownFinding> wanted, String text, String name) {
        try {
            return plain(parse(name, text)).equals(plain(wanted));
        } catch (BadInputException e) {
            return false;
        }
    }

    private static List<KnownFinding> plain(List<KnownFinding> entries) {
        return entries.stream()
                .map(
                        e ->
                                new KnownFinding(
                                        e.check(),
                                        e.device(),
                                        e.subject(),
                                        e.reason(),
                                        e.until(),
                                        Origin.MEMORY))
                .toList();
    }

    private static String scalar(String text) {
        boolean plain =
                text.matches("/?[a-z][A-Za-z0-9._/-]*")
                        && !text.matches("(?i)true|false|null|yes|no|on|off|y|n");
        return plain ? text : quoted(text);
    }

    private static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (c == '\n') {
                out.append("\\n");
            } else if (Character.isISOControl(c) || c == 0x2028 || c == 0x2029 || c == 0xFEFF) {
                out.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
            } else {
                out.append(c);
            }
        }
        return out.append('"').toString();
    }
}
