package reseat.given;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Move;
import reseat.model.Part;
import reseat.model.SetupTable;
import reseat.model.Supply;
import reseat.model.Tool;
import reseat.model.Way;

/**
 * States toy devices, one short line a fact. The base is {@code frame}, and the first part unless
 * it is stated; all is done by hand face up and takes 1000 + 500 ms unless a line says otherwise;
 * each change of tool takes 200 ms, each turn 300 ms.
 *
 * <p>A part: {@code "part lid under tape tool t5 takes 700 300 spare glass"}. A joint: {@code
 * "joint plug holds fan board under lid needs cell cuts dock slack tool t5 or spudger dearer 400
 * ruins label"}, its site last among what it holds; what it is dearer counts for the ways after
 * {@code or}; {@code gives} and {@code strained screw} say that it lets go by itself, and what must
 * be released before it; {@code springs} that it gives and is of role connector. Both may be done
 * {@code posture face-down}.
 */
public final class Toy {

    private static final List<String> TOOLS = List.of("hand", "t5", "spudger", "heat-mat");

    private Toy() {}

    /**
     * States a device.
     *
     * @param facts lines that begin with {@code part} or {@code joint}
     */
    public static Device of(String... facts) {
        return Device.build(
                "toy",
                device -> {
                    device.base("frame").hand("hand").usualPosture("face-up").setup(setup());
                    TOOLS.forEach(
                            id -> device.add(new Tool(id, id, Optional.empty(), Optional.empty())));
                    device.add(new Supply("cell", "Cell")).add(new Supply("dock", "Dock"));
                    device.add(Kind.plain(Kind.Scope.PART, "part"))
                            .add(Kind.plain(Kind.Scope.JOINT, "joint"))
                            .add(Kind.plain(Kind.Scope.MANIPULATION, "lift"))
                            .add(Kind.plain(Kind.Scope.MANIPULATION, "undo"));
                    if (!List.of(facts).contains("part frame")) {
                        device.add(part(Map.of("part", List.of("frame"))));
                    }
                    if (Arrays.stream(facts).anyMatch(fact -> words(fact).containsKey("springs"))) {
                        device.add(contacts());
                    }
                    for (String fact : facts) {
                        Map<String, List<String>> words = words(fact);
                        if (words.containsKey("part")) {
                            device.add(part(words));
                        } else {
                            device.add(joint(words));
                        }
                    }
                });
    }

    private static Kind contacts() {
        return new Kind(
                "contacts",
                Kind.Scope.JOINT,
                "contacts",
                "",
                "",
                Optional.of(Kind.Role.CONNECTOR),
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
                Optional.empty(),
                false,
                false,
                false,
                false,
                Optional.empty(),
                "");
    }

    private static Map<String, List<String>> words(String fact) {
        List<String> keys =
                List.of(
                        "part", "joint", "under", "tool", "posture", "takes", "spare", "holds",
                        "needs", "cuts", "slack", "or", "dearer", "ruins", "gives", "strained",
                        "springs");
        Map<String, List<String>> words = new LinkedHashMap<>();
        String key = "";
        for (String word : fact.split(" ")) {
            if (keys.contains(word)) {
                key = word;
                words.put(key, List.of());
            } else {
                String[] longer = words.get(key).toArray(String[]::new);
                longer = Arrays.copyOf(longer, longer.length + 1);
                longer[longer.length - 1] = word;
                words.put(key, List.of(longer));
            }
        }
        return words;
    }

    private static List<String> all(Map<String, List<String>> words, String key) {
        return words.getOrDefault(key, List.of());
    }

    private static Part part(Map<String, List<String>> words) {
        String id = words.get("part").get(0);
        String tool = words.containsKey("tool") ? words.get("tool").get(0) : "hand";
        Move move =
                new Move(
                        "lift",
                        tool,
                        posture(words),
                        ms(words),
                        restoreMs(words),
                        List.of(),
                        List.of());
        return new Part(
                id,
                id,
                "part",
                all(words, "under"),
                id.equals("frame") ? Optional.empty() : Optional.of(move),
                all(words, "spare"),
                Optional.empty(),
                List.of(),
                List.of());
    }

    private static Joint joint(Map<String, List<String>> words) {
        String id = words.get("joint").get(0);
        Map<String, Way> ways = new LinkedHashMap<>();
        List<String> tools = words.getOrDefault("tool", List.of("hand"));
        for (String tool : tools) {
            ways.put(tool, way(words, tool, 0, all(words, "ruins")));
        }
        long dearer = words.containsKey("dearer") ? number(words, "dearer", 0) : 0;
        all(words, "or").forEach(tool -> ways.put(tool, way(words, tool, dearer, List.of())));
        return new Joint(
                id,
                id,
                words.containsKey("springs") ? "contacts" : "joint",
                all(words, "holds"),
                all(words, "under"),
                words.containsKey("slack"),
                words.containsKey("gives") || words.containsKey("springs"),
                Optional.of(all(words, "needs")),
                all(words, "cuts"),
                ways,
                Optional.empty(),
                Optional.empty(),
                1);
    }

    private static Way way(
            Map<String, List<String>> words, String tool, long dearer, List<String> ruins) {
        return new Way(
                tool,
                "undo",
                tool,
                posture(words),
                ms(words) + dearer,
                restoreMs(words),
                List.of(),
                ruins,
                "",
                List.of(),
                List.of(),
                Optional.of(all(words, "strained")));
    }

    private static String posture(Map<String, List<String>> words) {
        return words.containsKey("posture") ? words.get("posture").get(0) : "face-up";
    }

    private static long ms(Map<String, List<String>> words) {
        return words.containsKey("takes") ? number(words, "takes", 0) : 1000;
    }

    private static long restoreMs(Map<String, List<String>> words) {
        return words.containsKey("takes") ? number(words, "takes", 1) : 500;
    }

    private static long number(Map<String, List<String>> words, String key, int at) {
        return Long.parseLong(words.get(key).get(at));
    }

    private static SetupTable setup() {
        Map<String, Map<String, Long>> table = new LinkedHashMap<>();
        for (String from : TOOLS) {
            Map<String, Long> row = new LinkedHashMap<>();
            TOOLS.forEach(to -> row.put(to, from.equals(to) ? 0L : 200L));
            table.put(from, row);
        }
        return new SetupTable(
                table,
                Map.of("face-up", Map.of("face-down", 300L), "face-down", Map.of("face-up", 300L)));
    }
}
