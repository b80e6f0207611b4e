package reseat.console.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Supplier;

/**
 * Makes command lines: the usual ones with ids of the device, and then a word dropped, doubled,
 * changed or slipped in, as people mistype them. Only files that a test owns are named where a
 * command writes.
 */
final class CommandLines {

    private static final List<String> USUAL =
            List.of(
                    "plan DEVICE GOAL --effort 60",
                    "plan DEVICE GOAL WISH --effort 60 --json",
                    "plan DEVICE GOAL --effort 60 --width N --ascii",
                    "plan DEVICE GOAL --effort 20 --start STATE",
                    "plan DEVICE GOAL --effort 20 --after PLAN:N",
                    "plan DEVICE GOAL --effort 20 --done ID --other N",
                    "plan DEVICE GOAL --effort N --time 50ms",
                    "why DEVICE ID GOAL --effort 30 --time 1s",
                    "graph DEVICE GOAL --dot",
                    "graph DEVICE WISH",
                    "compare DEVICE PLAN PLAN",
                    "judge DEVICE PLAN GOAL",
                    "judge DEVICE PLAN --variant ID",
                    "facts DEVICE --variant ID --json",
                    "proofread DEVICE --strict",
                    "assess DEVICE --by eu-index --stated STATE --seconds 1",
                    "assess DEVICE --by eu-index --ask",
                    "check DEVICE --only CHECK --from SEVERITY",
                    "check DEVICE --without CHECK --known KNOWN --as json",
                    "check DEVICE --job JOB --plan PLAN --today DATE",
                    "check DEVICE --set SETTING --as sarif",
                    "check DEVICE --rows ROWS --drives DRIVE --as junit",
                    "checks CHECK",
                    "torque THREAD HEAD --unit UNIT",
                    "torque SEAT --device DEVICE --friction VALUE",
                    "torque --convert TORQUE",
                    "driver --thread THREAD --head HEAD",
                    "driver DRIVE DRIVE",
                    "swap DEVICE SEAT --screw ID",
                    "trays DEVICE --length N --joints SEAT",
                    "trays DEVICE --plan PLAN --json",
                    "cut DEVICE BOND",
                    "today STOCK DEVICE GOAL --effort 30 --today DATE --warn N",
                    "stock list STOCK --today DATE",
                    "stock open STOCK",
                    "stock reserve STOCK ID --job ID --pick VALUE",
                    "stock use STOCK ID",
                    "plugins PLUGIN",
                    "schema",
                    "completion");

    /** What stands for a word of a kind, when it is not mistyped. */
    private static final Map<String, List<String>> LIKELY =
            Map.ofEntries(
                    Map.entry("N", List.of("1", "2", "10", "72")),
                    Map.entry("DATE", List.of("2026-11-25", "2030-01-01")),
                    Map.entry(
                            "CHECK",
                            List.of("screw-bottoms", "under-engagement", "drive-mismatch")),
                    Map.entry(
                            "SETTING",
                            List.of(
                                    "under-engagement.ratio=0.8",
                                    "protrusion-into-hazard.nearMm=0.3")),
                    Map.entry("SEVERITY", List.of("error", "WARNING", "note")),
                    Map.entry("DRIVE", List.of("T5", "PH0", "PH00", "TR6")),
                    Map.entry("THREAD", List.of("M2", "M2x0.4", "M3")),
                    Map.entry("HEAD", List.of("pan", "countersunk")),
                    Map.entry("TORQUE", List.of("0.06 N·m", "6 N.cm", "8 ozf in")),
                    Map.entry("UNIT", List.of("N·cm", "lbf·in")),
                    Map.entry("SEAT", List.of("board-screw.a", "board-bolt")),
                    Map.entry("BOND", List.of("display-bond")),
                    Map.entry("PART", List.of("cell", "board", "speaker", "display")),
                    Map.entry("JOINT", List.of("cell-plug", "board-bolt", "display-flex")),
                    Map.entry("PLUGIN", List.of("slate", "eu-index")));

    private static final List<String> WISHES =
            List.of(
                    "--forbid-part",
                    "--forbid-joint",
                    "--forbid-tool",
                    "--forbid-act",
                    "--require-part",
                    "--require-joint",
                    "--require-tool",
                    "--require-act",
                    "--permit-ruin");

    private final Random random;
    private final Mutator mutator;
    private final Map<String, Supplier<Path>> files;

    /**
     * Begins.
     *
     * @param random the dice
     * @param mutator knows words
     * @param files makes the files that stand for words in capitals
     */
    CommandLines(Random random, Mutator mutator, Map<String, Supplier<Path>> files) {
        this.random = random;
        this.mutator = mutator;
        this.files = files;
    }

    /** Returns the words after {@code reseat}. */
    List<String> next() throws IOException {
        List<String> words = new ArrayList<>();
        String text = "";
        for (String word : USUAL.get(random.nextInt(USUAL.size())).split(" ")) {
            Supplier<Path> file = files.get(word.replaceAll(":.*", ""));
            if (file != null) {
                Path path = file.get();
                text = word.equals("DEVICE") ? new String(Files.readAllBytes(path), UTF_8) : text;
                words.add(path + (word.contains(":") ? ":" + likely("N") : ""));
                continue;
            }
            switch (word) {
                case "GOAL" -> goal(words, text);
                case "WISH" -> {
                    words.add(WISHES.get(random.nextInt(WISHES.size())));
                    words.add(id(text));
                }
                case "ID" -> words.add(id(text));
                case "VALUE" -> words.add(value());
                default -> words.add(LIKELY.containsKey(word) ? likely(word) : word);
            }
        }
        if (random.nextInt(4) == 0) {
            mistype(words);
        }
        return words;
    }

    private void goal(List<String> words, String text) {
        switch (random.nextInt(4)) {
            case 0 -> words.add("--all");
            case 1 -> {
                words.add("--reach");
                words.add(random.nextBoolean() ? id(text) : likely("JOINT"));
            }
            default -> {
                words.add("--free");
                words.add(random.nextBoolean() ? id(text) : likely("PART"));
            }
        }
    }

    private String id(String text) {
        return random.nextInt(12) == 0 ? value() : mutator.otherId(text);
    }

    private String likely(String kind) {
        List<String> words = LIKELY.getOrDefault(kind, List.of());
        return random.nextInt(8) == 0 ? value() : words.get(random.nextInt(words.size()));
    }

    private String value() {
        return mutator.value();
    }

    private void mistype(List<String> words) {
        int at = random.nextInt(words.size());
        switch (random.nextInt(4)) {
            case 0 -> words.remove(at);
            case 1 -> words.add(random.nextInt(words.size() + 1), words.get(at));
            case 2 -> words.set(at, value());
            default ->
                    words.add(
                            random.nextInt(words.size() + 1),
                            random.nextBoolean() ? value() : "--json");
        }
    }
}
