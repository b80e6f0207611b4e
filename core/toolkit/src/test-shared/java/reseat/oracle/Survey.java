package reseat.oracle;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** Counts, over many seeds, what the random devices are like. */
final class Survey {

    private final Map<Feature, Integer> matters = new EnumMap<>(Feature.class);
    private int solvable;
    private int impossible;
    private int trivial;
    private long acts;

    /** Adds a case with its optimum. */
    void add(Case of, Optional<Oracle.Optimum> optimum) {
        if (optimum.isEmpty()) {
            impossible++;
            return;
        }
        solvable++;
        acts += optimum.get().acts().size();
        if (optimum.get().acts().isEmpty()) {
            trivial++;
        }
        for (Feature feature : Feature.values()) {
            if (feature.matters(of, optimum.get().ms())) {
                matters.merge(feature, 1, Integer::sum);
            }
        }
    }

    int looked() {
        return solvable + impossible;
    }

    int solvable() {
        return solvable;
    }

    /** Returns in how many devices a feature changes the optimum. */
    int count(Feature feature) {
        return matters.getOrDefault(feature, 0);
    }

    @Override
    public String toString() {
        return solvable
                + " solvable devices ("
                + trivial
                + " at the goal from the start), "
                + impossible
                + " impossible, "
                + acts / Math.max(1, solvable)
                + " acts on average; the optimum changes when switched off: "
                + matters;
    }
}
