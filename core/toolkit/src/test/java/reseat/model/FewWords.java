package reseat.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Writes a device in a few words a line, for tests of what is computed from its facts. The base is
 * the frame.
 *
 * <pre>
 * cover lid            kind and id of a part
 * screw s1: lid frame  kind and id of a joint, and the parts that it holds
 * supply cell of=pack first
 * </pre>
 *
 * After it stand {@code under=A,B}, {@code needs=A,B} ({@code needs=none}), {@code cuts=A}, {@code
 * slack}, {@code gives}, {@code pry} (the way takes force) and {@code strained=A,B}. Kinds named
 * after a role have it.
 */
final class FewWords {

    private static final List<String> PARTS =
            List.of("part", "cover", "board", "cell", "display", "cable", "door");

    private FewWords() {}

    static Device device(String... lines) {
        return Device.build(
                "few-words",
                facts -> {
                    facts.base("frame").hand("hand").usualPosture("flat").setup(setup());
                    PARTS.forEach(id -> facts.add(kind(Kind.Scope.PART, id)));
                    List.of("joint", "screw", "connector", "clip")
                            .forEach(id -> facts.add(kind(Kind.Scope.JOINT, id)));
                    facts.add(kind(Kind.Scope.MANIPULATION, "pry"));
                    facts.add(kind(Kind.Scope.MANIPULATION, "undo"));
                    facts.add(part(new Line("part frame"), true));
                    for (String text : lines) {
                        add(facts, new Line(text));
                    }
                });
    }

    private static void add(Device.Builder facts, Line line) {
        if (line.kind.equals("supply")) {
            facts.add(
                    new Supply(
                            line.id,
                            line.id,
                            line.list("of").map(of -> of.get(0)),
                            line.has("first")));
        } else if (PARTS.contains(line.kind)) {
            facts.add(part(line, false));
        } else {
            facts.add(joint(line));
        }
    }

    private static Part part(Line line, boolean base) {
        Move move = new Move("lift", "hand", "flat", 1, 1, List.of(), List.of());
        return new Part(
                line.id,
                line.id,
                line.kind,
                line.list("under").orElse(List.of()),
                base ? Optional.empty() : Optional.of(move),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                line.list("needs"));
    }

    private static Joint joint(Line line) {
        Way way =
                new Way(
                        "w",
                        line.has("pry") ? "pry" : "undo",
                        "hand",
                        "flat",
                        1,
                        1,
                        List.of(),
                        List.of(),
                        "",
                        List.of(),
                        List.of(),
                        line.list("strained"));
        return new Joint(
                line.id,
                line.id,
                line.kind,
                line.holds,
                line.list("under").orElse(List.of()),
                line.has("slack"),
                line.has("gives"),
                line.list("needs"),
                line.list("cuts").orElse(List.of()),
                Map.of("w", way),
                Optional.empty(),
                Optional.empty(),
                1);
    }

    private static SetupTable setup() {
        return new SetupTable(
                Map.of("hand", Map.of("hand", 0L)), Map.of("flat", Map.of("flat", 0L)));
    }

    private static Kind kind(Kind.Scope scope, String id) {
        Optional<Kind.Role> role =
                Arrays.stream(Kind.Role.values())
                        .filter(each -> each.name().toLowerCase(java.util.Locale.ROOT).equals(id))
                        .findFirst();
        return new Kind(
                id,
                scope,
                id,
                "",
                "",
                role,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                "",
                false,
                false,
                false,
                false,
                0,
                OptionalInt.empty(),
                id.equals("door") ? Optional.of(List.of()) : Optional.empty(),
                id.equals("pry"),
                false,
                false,
                false,
                Optional.empty(),
                "");
    }

    /** A line, taken apart. */
    private static final class Line {
        private final String kind;
        private final String id;
        private final List<String> holds = new ArrayList<>();
        private final Map<String, String> rest = new LinkedHashMap<>();

        Line(String text) {
            List<String> words = List.of(text.split(" +"));
            kind = words.get(0);
            id = words.get(1).replace(":", "");
            int at = 2;
            while (words.get(1).endsWith(":")
                    && holds.size() < 3
                    && at < words.size()
                    && !isFact(words.get(at))) {
                holds.add(words.get(at++));
            }
            for (String word : words.subList(at, words.size())) {
                int is = word.indexOf('=');
                rest.put(is < 0 ? word : word.substring(0, is), word.substring(is + 1));
            }
        }

        private static boolean isFact(String word) {
            return word.contains("=") || List.of("slack", "gives", "pry", "first").contains(word);
        }

        boolean has(String word) {
            return rest.containsKey(word);
        }

        Optional<List<String>> list(String key) {
            return Optional.ofNullable(rest.get(key))
                    .map(text -> text.equals("none") ? List.of() : List.of(text.split(",")));
        }
    }
}
