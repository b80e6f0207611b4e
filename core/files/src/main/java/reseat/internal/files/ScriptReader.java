package reseat.internal.files;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import reseat.check.CheckInfo;
import reseat.check.CheckInfo.Need;
import reseat.check.CheckInfo.Parameter;
import reseat.files.ScriptFile;
import reseat.files.ScriptFile.Language;
import reseat.model.BadInputException;
import reseat.model.Origin;
import reseat.model.Severity;
import reseat.text.QuoteText;

/** Reads script files: the leading comment, and the text as it is. Single use. */
public final class ScriptReader {

    private static final String OPENING = "/* reseat-script";

    private static final String CLOSING = "*/";

    private static final List<String> KEYS =
            List.of(
                    "id",
                    "title",
                    "finds",
                    "matters",
                    "severity",
                    "tags",
                    "parameters",
                    "needs",
                    "api",
                    "from");

    private static final List<String> PARAMETER_KEYS = List.of("says", "unit", "usual");

    private final Path path;
    private final String file;
    private final Problems problems;

    private ScriptReader(Path path) {
        this.path = path;
        this.file = path.toString();
        this.problems = new Problems(file);
    }

    /** Reads a script; see {@code ScriptFile.read}. */
    public static ScriptFile read(Path path) throws BadInputException {
        ScriptReader reader = new ScriptReader(path);
        ScriptFile script = reader.read();
        if (script == null || reader.problems.hasErrors()) {
            throw new BadInputException(reader.problems.sorted());
        }
        return script;
    }

    private @Nullable ScriptFile read() {
        Optional<Language> language =
                Arrays.stream(Language.values()).filter(l -> file.endsWith(l.ending())).findFirst();
        if (language.isEmpty()) {
            problems.error(new Origin(file, 0, 0), "a script file must end in .js or .java");
            return null;
        }
        byte[] bytes = Sources.load(path, file, problems).orElse(null);
        if (bytes == null) {
            return null;
        }
        if (bytes.length > ScriptFile.MAX_BYTES) {
            problems.error(
                    new Origin(file, 0, 0),
                    "a script must not exceed " + ScriptFile.MAX_BYTES / 1024 + " KiB");
            return null;
        }
        String text;
        try {
            text = Trees.decode(file, bytes);
        } catch (TreeException e) {
            problems.error(e.at(), e.text());
            return null;
        }
        Node.Fields fields = comment(text);
        CheckInfo info = fields == null ? null : info(fields);
        if (fields == null || info == null) {
            return null;
        }
        String from = text(fields, "from", false);
        return new ScriptFile(file, language.get(), info, from, sha256(bytes), text);
    }

    /** Finds the comment and reads it where it stands, so that line numbers match the file. */
    private Node.@Nullable Fields comment(String text) {
        int opening = text.indexOf(OPENING);
        int closing = opening < 0 ? -1 : text.indexOf(CLOSING, opening + OPENING.length());
        if (closing < 0 || !text.substring(0, opening).isBlank()) {
            problems.error(
                    new Origin(file, 1, 1),
                    "a script must begin with the comment \""
                            + OPENING
                            + "\" that describes it and ends in \""
                            + CLOSING
                            + "\"");
            return null;
        }
        int start = opening + OPENING.length();
        StringBuilder yaml = new StringBuilder();
        text.substring(0, start).chars().filter(c -> c == '\n').forEach(c -> yaml.append('\n'));
        yaml.append(text, start, closing);
        Optional<Node> tree = Trees.parse(file, yaml.toString().getBytes(UTF_8), problems);
        if (tree.isPresent() && !(tree.get() instanceof Node.Fields)) {
            problems.error(
                    tree.get().at(),
                    "found " + tree.get().describe() + ", expected keys and values");
        }
        return tree.isPresent() && tree.get() instanceof Node.Fields fields ? fields : null;
    }

    private @Nullable CheckInfo info(Node.Fields fields) {
        unknownKeys(fields, KEYS, "a script");
        Set<Need> needs = EnumSet.noneOf(Need.class);
        for (Node.Scalar each : scalars(fields, "needs")) {
            word(each, "needs", Need.values()).ifPresent(needs::add);
        }
        Severity severity = Severity.WARNING;
        if (fields.get("severity") instanceof Node.Scalar scalar) {
            severity = word(scalar, "severity", Severity.values()).orElse(severity);
        }
        String id = text(fields, "id", true);
        String title = text(fields, "title", true);
        String finds = text(fields, "finds", true);
        String matters = text(fields, "matters", true);
        List<String> tags = scalars(fields, "tags").stream().map(Node.Scalar::text).toList();
        List<Parameter> parameters = parameters(fields.fields("parameters"));
        int api = api(fields);
        if (problems.hasErrors()) {
            return null;
        }
        try {
            return new CheckInfo(id, title, finds, matters, severity, tags, parameters, needs, api);
        } catch (IllegalArgumentException e) {
            problems.error(at(fields, "id"), String.valueOf(e.getMessage()));
            return null;
        }
    }

    private int api(Node.Fields fields) {
        String text = fields.text("api");
        try {
            return text == null ? CheckInfo.API : Integer.parseInt(text);
        } catch (NumberFormatException e) {
            problems.error(
                    at(fields, "api"),
                    "api: found "
                            + QuoteText.of(String.valueOf(text))
                            + ", expected a whole number");
            return CheckInfo.API;
        }
    }

    private List<Parameter> parameters(Node.@Nullable Fields fields) {
        List<Parameter> all = new ArrayList<>();
        if (fields == null) {
            return all;
        }
        for (Map.Entry<String, Node.Entry> each : fields.entries().entrySet()) {
            if (!(each.getValue().value() instanceof Node.Fields of)) {
                problems.error(
                        each.getValue().keyAt(), each.getKey() + ": expected says, unit and usual");
                continue;
            }
            unknownKeys(of, PARAMETER_KEYS, "a parameter");
            String unit = text(of, "unit", false);
            String says = text(of, "says", true);
            String usual = text(of, "usual", true);
            try {
                all.add(new Parameter(each.getKey(), says, unit, usual));
            } catch (IllegalArgumentException e) {
                problems.error(at(of, "usual"), String.valueOf(e.getMessage()));
            }
        }
        return all;
    }

    private void unknownKeys(Node.Fields fields, Collection<String> known, String what) {
        fields.entries()
                .forEach(
                        (key, entry) -> {
                            if (!known.contains(key)) {
                                problems.error(
                                        entry.keyAt(),
                                        what
                                                + " has no key "
                                                + QuoteText.of(key)
                                                + "."
                                                + Words.hint(key, known, "keys"));
                            }
                        });
    }

    private String text(Node.Fields fields, String key, boolean required) {
        Node node = fields.get(key);
        if (node instanceof Node.Scalar scalar && !scalar.text().isBlank()) {
            return scalar.text();
        }
        if (required || node != null) {
            problems.error(at(fields, key), key + ": expected text");
        }
        return "";
    }

    private List<Node.Scalar> scalars(Node.Fields fields, String key) {
        Node node = fields.get(key);
        List<Node> nodes = node instanceof Node.Items list ? list.items() : List.of();
        List<Node.Scalar> all = new ArrayList<>();
        if (node instanceof Node.Scalar one) {
            all.add(one);
        }
        for (Node each : nodes) {
            if (each instanceof Node.Scalar scalar) {
                all.add(scalar);
            } else {
                problems.error(each.at(), key + ": found " + each.describe() + ", expected a word");
            }
        }
        return all;
    }

    private <E extends Enum<E>> Optional<E> word(Node.Scalar found, String key, E[] known) {
        List<String> names =
                Arrays.stream(known).map(e -> e.name().toLowerCase(Locale.ROOT)).toList();
        int at = names.indexOf(found.text().toLowerCase(Locale.ROOT));
        if (at < 0) {
            problems.error(
                    found.at(),
                    key
                            + ": found "
                            + QuoteText.of(found.text())
                            + "."
                            + Words.hint(found.text(), names, "words"));
            return Optional.empty();
        }
        return Optional.of(known[at]);
    }

    private static Origin at(Node.Fields fields, String key) {
        Node node = fields.get(key);
        return node == null ? fields.at() : node.at();
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
