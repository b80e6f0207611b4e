package reseat.console.prompt;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import reseat.check.Finding;
import reseat.model.Joint;
import reseat.model.Part;

/** Converts input of a session to a check that shops can share. */
final class CheckText {

    private static final Pattern DECLARES =
            Pattern.compile(
                    "^\\s*(?:let|const|var|function|[\\w.<>\\[\\], ?]+?)\\s+([A-Za-z_$][\\w$]*)\\s*[=(;]");
    private static final Pattern RESULT = Pattern.compile("r[0-9]+");

    private final String id;
    private final Tongue tongue;
    private final List<Evaluation> inputs;
    private final Collection<?> values;

    /**
     * Prepares it.
     *
     * @param inputs the inputs that ran without error, in the language of the check; the last one
     *     has the value
     * @param values that value
     */
    CheckText(String id, Tongue tongue, List<Evaluation> inputs, Collection<?> values) {
        this.id = id;
        this.tongue = tongue;
        this.inputs = inputs;
        this.values = values;
    }

    /** Returns the text; empty if the values cannot become findings. */
    Optional<String> text() {
        String pointer = pointer();
        if (pointer == null) {
            return Optional.empty();
        }
        Evaluation last = inputs.get(inputs.size() - 1);
        String title = capital(id.replace('-', ' '));
        StringBuilder text = new StringBuilder();
        text.append("/* reseat-script\nid: ").append(id);
        text.append("\ntitle: ").append(title);
        text.append("\nfinds: ").append(quoted("What is in " + oneLine(last.text())));
        text.append("\nmatters: Say here why that matters.\nseverity: warning\n*/\n");
        text.append(tongue == Tongue.JS ? js(last, pointer) : java(last, pointer));
        return Optional.of(text.toString());
    }

    private String js(Evaluation last, String pointer) {
        StringBuilder text = new StringBuilder("function run(input) {\n");
        text.append("  // functions of the console\n");
        text.append("  const device = () => input.device();\n");
        text.append("  const facts = () => input.facts();\n");
        text.append("  const tables = () => input.tables();\n\n");
        String found = body(text, last);
        text.append("\n  return ").append(found);
        text.append(
                pointer.isEmpty()
                        ? ";\n}\n"
                        : ".map(each => input.finding("
                                + pointer
                                + ").says(`${"
                                + pointer
                                + "}: say here what is wrong.`, 'Say here what to do.'));\n}\n");
        return text.toString();
    }

    private String java(Evaluation last, String pointer) {
        StringBuilder text = new StringBuilder("List<Finding> run(CheckInput input) {\n");
        String found = body(text, last);
        text.append("\n    return ").append(found);
        text.append(
                pointer.isEmpty()
                        ? ";\n}\n"
                        : ".stream()\n            .map(each -> input.finding("
                                + pointer
                                + ").says("
                                + pointer
                                + " + \": say here what is wrong.\", \"Say here what to do.\"))\n"
                                + "            .toList();\n}\n");
        return text.toString();
    }

    /** Writes the inputs that the last one depends on, and returns the expression of its value. */
    private String body(StringBuilder text, Evaluation last) {
        String indent = tongue == Tongue.JS ? "  " : "    ";
        for (Evaluation each : needed()) {
            String line = line(each);
            for (String part : line.lines().toList()) {
                text.append(indent).append(part).append('\n');
            }
        }
        String name = last.outcome().name();
        return name.isEmpty() ? "[]" : name;
    }

    /** Unnamed values get the name that the console gave them. */
    private String line(Evaluation each) {
        String code = each.text().strip();
        String name = each.outcome().name();
        boolean nameless = RESULT.matcher(name).matches() && !code.equals(name);
        if (nameless) {
            String bare = code.replaceFirst(";$", "");
            code = (tongue == Tongue.JS ? "const " : "var ") + name + " = " + bare + ";";
        }
        return tongue == Tongue.JS ? code : onInput(code);
    }

    private static String onInput(String code) {
        return code.replaceAll("\\bdevice\\([^()]*\\)", "input.device()")
                .replaceAll("\\bfacts\\([^()]*\\)", "input.facts()")
                .replaceAll("\\bfacts\\(input\\.device\\(\\)\\)", "input.facts()")
                .replaceAll("(?<!\\.)\\btables\\(\\)", "input.tables()");
    }

    private List<Evaluation> needed() {
        List<Evaluation> kept = new ArrayList<>();
        Set<String> wanted = new LinkedHashSet<>();
        for (int i = inputs.size() - 1; i >= 0; i--) {
            Evaluation each = inputs.get(i);
            boolean shows = each.text().strip().equals(each.outcome().name());
            if (shows && i == inputs.size() - 1) {
                wanted.add(each.outcome().name());
                continue;
            }
            String name = defined(each);
            if (!shows && ((kept.isEmpty() && wanted.isEmpty()) || wanted.contains(name))) {
                kept.add(0, each);
                Matcher words = Pattern.compile("[A-Za-z_$][\\w$]*").matcher(each.text());
                while (words.find()) {
                    wanted.add(words.group());
                }
                wanted.remove(name);
            }
        }
        return kept;
    }

    private static String defined(Evaluation each) {
        if (!each.outcome().name().isEmpty()) {
            return each.outcome().name();
        }
        Matcher declares = DECLARES.matcher(each.text());
        return declares.find() ? declares.group(1) : "";
    }

    /**
     * Returns the pointer expression of a finding about one value; empty for findings, null if
     * there is none.
     */
    private @Nullable String pointer() {
        Object first = values.stream().filter(v -> v != null).findFirst().orElse(null);
        boolean js = tongue == Tongue.JS;
        if (first instanceof Finding) {
            return "";
        }
        if (first instanceof Part) {
            return js ? "`/parts/${each.id()}`" : "\"/parts/\" + each.id()";
        }
        if (first instanceof Joint) {
            return js ? "`/joints/${each.id()}`" : "\"/joints/\" + each.id()";
        }
        return first != null && Marked.hasPointer(first) ? "each.pointer()" : null;
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static String oneLine(String text) {
        String line = text.strip().replaceAll("\\s+", " ");
        return line.length() <= 200 ? line : line.substring(0, 200) + "…";
    }

    private static String quoted(String words) {
        return "'" + words.replace("*/", "* /").replace("'", "''") + "'";
    }
}
