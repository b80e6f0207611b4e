package reseat.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a change of tool and a change of posture cost, in whole milliseconds. A set-up is the sum of
 * both. Both tables obey the triangle inequality: a detour via a third tool is never cheaper than
 * the direct change.
 */
public final class SetupTable {

    private final Map<String, Map<String, Long>> toolMs;
    private final Map<String, Map<String, Long>> postureMs;
    private final long layAsideMs;
    private final long turnOpenMs;
    private final List<String> tools;
    private final List<String> postures;

    /**
     * Creates the table.
     *
     * @param toolMs for each tool (the hand among them), the time to change to each other tool
     * @param postureMs for each posture, the time to change to each other posture
     * @throws IllegalArgumentException if {@link #check} finds anything
     */
    public SetupTable(
            Map<String, Map<String, Long>> toolMs, Map<String, Map<String, Long>> postureMs) {
        this(toolMs, postureMs, 0, 0);
    }

    /**
     * Creates the table.
     *
     * @param toolMs for each tool (the hand among them), the time to change to each other tool
     * @param postureMs for each posture, the time to change to each other posture
     * @param layAsideMs what laying a part aside on its tether takes more than lifting it off, in
     *     milliseconds
     * @param turnOpenMs what a change of posture takes more while a part is laid aside, in
     *     milliseconds
     * @throws IllegalArgumentException if {@link #check} finds anything or a time is negative
     */
    public SetupTable(
            Map<String, Map<String, Long>> toolMs,
            Map<String, Map<String, Long>> postureMs,
            long layAsideMs,
            long turnOpenMs) {
        this.layAsideMs = layAsideMs;
        this.turnOpenMs = turnOpenMs;
        this.toolMs = deepCopy(toolMs);
        this.postureMs = deepCopy(postureMs);
        this.tools = List.copyOf(toolMs.keySet());
        this.postures = List.copyOf(postureMs.keySet());
        List<String> wrong = new ArrayList<>();
        check("tool", this.toolMs).ifPresent(wrong::add);
        check("posture", this.postureMs).ifPresent(wrong::add);
        if (Math.min(layAsideMs, turnOpenMs) < 0
                || Math.max(layAsideMs, turnOpenMs) > Duration.MAX_MS) {
            wrong.add("laying aside and turning open must take between 0 and 24 h");
        }
        if (!wrong.isEmpty()) {
            throw new IllegalArgumentException(String.join("; ", wrong));
        }
    }

    /**
     * Finds the first error in one of the two tables: a missing or negative entry, a change to
     * itself that is not free, or three entries that violate the triangle inequality.
     *
     * @param what "tool" or "posture", for the message
     * @return a sentence, or empty if the table is sound
     */
    public static Optional<String> check(String what, Map<String, Map<String, Long>> table) {
        List<String> ids = List.copyOf(table.keySet());
        int n = ids.size();
        long[][] cost = new long[n][n];
        for (int i = 0; i < n; i++) {
            Map<String, Long> row = Objects.requireNonNull(table.get(ids.get(i)));
            for (int k = 0; k < n; k++) {
                Long ms = row.get(ids.get(k));
                Optional<String> wrong = checkEntry(what, ids.get(i), ids.get(k), ms);
                if (wrong.isPresent()) {
                    return wrong;
                }
                cost[i][k] = ms == null ? 0 : ms;
            }
        }
        return checkTriangles(what, ids, cost);
    }

    private static Optional<String> checkEntry(
            String what, String from, String to, @Nullable Long ms) {
        if (from.equals(to)) {
            return ms == null || ms == 0
                    ? Optional.empty()
                    : Optional.of(
                            "staying with " + what + " " + from + " must cost 0 ms, not " + ms);
        }
        String change = "the change of " + what + " from " + from + " to " + to;
        if (ms == null) {
            return Optional.of(change + " has no time");
        }
        return ms < 0 || ms > Duration.MAX_MS
                ? Optional.of(change + " must be between 0 and 24 h, not " + ms + " ms")
                : Optional.empty();
    }

    private static Optional<String> checkTriangles(String what, List<String> ids, long[][] cost) {
        int n = ids.size();
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                for (int via = 0; via < n; via++) {
                    if (cost[i][via] + cost[via][k] < cost[i][k]) {
                        return Optional.of(
                                "the change of "
                                        + what
                                        + " from "
                                        + ids.get(i)
                                        + " to "
                                        + ids.get(k)
                                        + " costs "
                                        + cost[i][k]
                                        + " ms, but over "
                                        + ids.get(via)
                                        + " only "
                                        + (cost[i][via] + cost[via][k])
                                        + " ms: set-ups must obey the triangle inequality");
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** Returns the tools of the table, the hand among them. */
    public List<String> tools() {
        return tools;
    }

    /** Returns the postures of the table. */
    public List<String> postures() {
        return postures;
    }

    /**
     * Returns the time to change from one tool to another, in milliseconds.
     *
     * @throws IllegalArgumentException if one of them is not in the table
     */
    public long toolChangeMs(String from, String to) {
        return look("tool", toolMs, from, to);
    }

    /**
     * Returns the time to change from one posture to another, in milliseconds.
     *
     * @throws IllegalArgumentException if one of them is not in the table
     */
    public long postureChangeMs(String from, String to) {
        return look("posture", postureMs, from, to);
    }

    /** Returns what laying a part aside takes more than lifting it off, in milliseconds. */
    public long layAsideMs() {
        return layAsideMs;
    }

    /** Returns what a change of posture takes more while a part is laid aside, in milliseconds. */
    public long turnOpenMs() {
        return turnOpenMs;
    }

    /**
     * Returns the set-up between two acts: change of tool, plus change of posture, plus turning
     * open if the posture changes while a part is laid aside; in milliseconds.
     *
     * @param laidAside whether a part is laid aside meanwhile
     */
    public long setupMs(
            String fromTool,
            String fromPosture,
            String toTool,
            String toPosture,
            boolean laidAside) {
        return setupMs(fromTool, fromPosture, toTool, toPosture)
                + (laidAside && !fromPosture.equals(toPosture) ? turnOpenMs : 0);
    }

    /**
     * Returns the set-up between two acts while no part is laid aside: change of tool plus change
     * of posture, in milliseconds.
     */
    public long setupMs(String fromTool, String fromPosture, String toTool, String toPosture) {
        return toolChangeMs(fromTool, toTool) + postureChangeMs(fromPosture, toPosture);
    }

    private static long look(
            String what, Map<String, Map<String, Long>> table, String from, String to) {
        Map<String, Long> row = table.get(from);
        if (row == null || !table.containsKey(to)) {
            throw new IllegalArgumentException(
                    "the set-up table has no " + what + " " + (row == null ? from : to));
        }
        if (from.equals(to)) {
            return 0;
        }
        return Objects.requireNonNull(row.get(to));
    }

    private static Map<String, Map<String, Long>> deepCopy(Map<String, Map<String, Long>> table) {
        Map<String, Map<String, Long>> copy = new LinkedHashMap<>();
        table.forEach((from, row) -> copy.put(from, Ordered.copyOf(row)));
        return copy;
    }
}
