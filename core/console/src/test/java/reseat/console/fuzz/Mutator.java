package reseat.console.fuzz;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Changes a text as a person, a program or a bad disk would: now and then letter by letter, mostly
 * along the grammar, so that what comes out gets past the parser and on to what lies behind it.
 */
final class Mutator {

    /** A quoted text, a number, a word: what stands as a key, a value or a cell. */
    private static final Pattern ATOM =
            Pattern.compile(
                    "\"(?:[^\"\\\\\\n]++|\\\\.)*+\"|-?[0-9]+(?:\\.[0-9]+)?|[A-Za-z][A-Za-z0-9_.-]*");

    private static final Pattern ID = Pattern.compile("([A-Za-z][A-Za-z0-9_-]*)\"?: *\\{");

    private static final List<String> VALUES =
            List.of(
                    "null",
                    "~",
                    "true",
                    "false",
                    "{}",
                    "[]",
                    "[[]]",
                    "{a: 1}",
                    "\"\"",
                    "''",
                    "0",
                    "-1",
                    "1",
                    "0.5",
                    "1e400",
                    "-1e-400",
                    "1e-999999999",
                    "999999999999999999999",
                    "2147483648",
                    "9223372036854775808",
                    ".inf",
                    ".nan",
                    "0x10",
                    "0o7",
                    "1_000",
                    "1:30",
                    "2020-01-01",
                    "4 s",
                    "4.2s",
                    "-4 s",
                    "4 parsecs",
                    "1.5 mm",
                    "1,5 mm",
                    "0.06 N·m",
                    "8 ozf in",
                    "6 N.cm",
                    "1e999 mm",
                    "A1B0G1",
                    "A1B0G1A1B0P1A0",
                    "A9999999B0",
                    "(A1B0",
                    "hand",
                    "face-up",
                    "screw",
                    "clip",
                    "lift",
                    "base",
                    "b",
                    "board",
                    "lid",
                    "resolved",
                    "reseat-device/1",
                    "slate",
                    "&a [*a]",
                    "*a",
                    "&a x",
                    "!!binary x",
                    "!x y",
                    "|",
                    ">",
                    "? x",
                    "- x",
                    "<<",
                    "%YAML 1.1",
                    "---",
                    "...",
                    "#",
                    "\\",
                    "\\u0000",
                    "\u0000",
                    "\uFEFF",
                    "\uFFFD",
                    "\u0085",
                    "\u2028",
                    "\u202E",
                    "é",
                    "😀",
                    "\uD83D",
                    "\t",
                    "\r",
                    "\"",
                    "'",
                    "`",
                    "@",
                    "a".repeat(70),
                    "a".repeat(5000),
                    "[".repeat(100),
                    "{a: ".repeat(70),
                    "release:lid/usual",
                    "move:lid",
                    "prepare:x",
                    "move:",
                    "../../etc/passwd",
                    "/dev/null",
                    ".",
                    "CON",
                    "seats.csv",
                    "=1+1",
                    ";",
                    ",",
                    ",,,,");

    private static final List<String> KEYS =
            List.of(
                    "parts",
                    "joints",
                    "variants",
                    "kinds",
                    "tools",
                    "setup",
                    "hazards",
                    "consumables",
                    "seatTable",
                    "under",
                    "holds",
                    "ways",
                    "seats",
                    "seat",
                    "bond",
                    "move",
                    "needs",
                    "cuts",
                    "slack",
                    "screw",
                    "screwTypes",
                    "supplies",
                    "prepare",
                    "tests",
                    "time",
                    "ms",
                    "restoreMs",
                    "kind",
                    "tool",
                    "posture",
                    "x",
                    "y",
                    "xMm",
                    "length",
                    "lengthMm",
                    "edge",
                    "strips",
                    "spareIncludes",
                    "base",
                    "hand",
                    "usualPosture",
                    "family",
                    "resolved",
                    "format",
                    "id",
                    "variant",
                    "outline",
                    "madeCycles",
                    "consumes",
                    "quantity",
                    "dwell",
                    "ratedCycles",
                    "acts",
                    "released",
                    "places",
                    "goal",
                    "__proto__");

    private final Random random;

    Mutator(Random random) {
        this.random = random;
    }

    /** Returns a text changed in one place or a few. */
    String mutate(String sound, List<String> others) {
        String text = sound;
        text = once(text, others);
        while (random.nextInt(3) == 0) {
            text = once(text, others);
            if (text.length() > 200_000) {
                return text.substring(0, 200_000);
            }
        }
        return text;
    }

    private String once(String text, List<String> others) {
        return switch (random.nextInt(12)) {
            case 0, 1, 2 -> atom(text, any(VALUES));
            case 3 -> atom(text, any(KEYS));
            case 4 -> atom(text, otherAtom(text));
            case 5 -> atom(text, otherAtom(any(others)));
            case 6, 7 -> lines(text);
            case 8 -> indented(text);
            case 9 -> cut(text, "");
            case 10 -> cut(text, any(VALUES));
            default -> letter(text);
        };
    }

    private String atom(String text, String instead) {
        List<MatchResult> all = ATOM.matcher(text).results().toList();
        if (all.isEmpty()) {
            return text + instead;
        }
        MatchResult one = all.get(random.nextInt(all.size()));
        // in JSON a word stands in quotes: keep them, mostly
        boolean quoted =
                one.group().startsWith("\"") && random.nextInt(4) > 0 && !instead.contains("\"");
        return text.substring(0, one.start())
                + (quoted ? '"' + instead + '"' : instead)
                + text.substring(one.end());
    }

    /** Returns a word that is right somewhere, or nowhere. */
    String value() {
        return any(VALUES);
    }

    /** Returns what a text gives a name to: mostly the id of a part, a joint, a tool. */
    String otherId(String text) {
        List<MatchResult> all = ID.matcher(text).results().toList();
        return all.isEmpty() ? "x" : all.get(random.nextInt(all.size())).group(1);
    }

    /** Returns a word of a text, without its quotes. */
    String otherAtom(String text) {
        List<MatchResult> all = ATOM.matcher(text).results().toList();
        if (all.isEmpty()) {
            return "x";
        }
        String found = all.get(random.nextInt(all.size())).group();
        return found.startsWith("\"") ? found.substring(1, found.length() - 1) : found;
    }

    /** Takes away, doubles or moves a block: a line and what is indented below it. */
    private String lines(String text) {
        List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
        int from = random.nextInt(lines.size());
        int to = from + 1;
        while (to < lines.size() && indent(lines.get(to)) > indent(lines.get(from))) {
            to++;
        }
        List<String> block = List.copyOf(lines.subList(from, to));
        int what = random.nextInt(3);
        if (what != 1) {
            lines.subList(from, to).clear();
        }
        if (what != 0) {
            lines.addAll(random.nextInt(lines.size() + 1), block);
        }
        return String.join("\n", lines);
    }

    private String indented(String text) {
        List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
        int at = random.nextInt(lines.size());
        String line = lines.get(at);
        lines.set(
                at,
                random.nextBoolean() || !line.startsWith(" ") ? "  " + line : line.substring(1));
        return String.join("\n", lines);
    }

    private static int indent(String line) {
        int i = 0;
        while (i < line.length() && line.charAt(i) == ' ') {
            i++;
        }
        return i;
    }

    private String cut(String text, String instead) {
        int from = random.nextInt(text.length() + 1);
        int to = Math.min(text.length(), from + random.nextInt(30));
        return text.substring(0, from)
                + instead
                + text.substring(random.nextInt(20) == 0 ? text.length() : to);
    }

    private String letter(String text) {
        int at = random.nextInt(text.length() + 1);
        String letter =
                Character.toString(
                        random.nextInt(8) == 0 ? random.nextInt(0x10000) : random.nextInt(128));
        return text.substring(0, at) + letter + text.substring(at);
    }

    private String any(List<String> list) {
        return list.get(random.nextInt(list.size()));
    }
}
