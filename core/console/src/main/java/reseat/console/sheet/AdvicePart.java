package reseat.console.sheet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import reseat.model.Device;
import reseat.model.Hazard;
import reseat.model.Signal;
import reseat.plan.Advice;

/** Writes advice: hazards in full the first time that they appear on the sheet, short later. */
final class AdvicePart {

    private static final int INDENT = 18;

    private final Device device;
    private final Paper paper;

    /** For so many steps one remembers what can only spoil things. */
    private static final int REMEMBERED = 6;

    private final Map<String, Integer> told = new LinkedHashMap<>();
    private final Map<String, Integer> lately = new LinkedHashMap<>();
    private int step;

    AdvicePart(Device device, Paper paper) {
        this.device = device;
        this.paper = paper;
    }

    /** Writes what has to be known before a step. */
    void before(List<Advice> advice, int number) {
        step = number;
        Map<Signal, List<String>> again = new EnumMap<>(Signal.class);
        for (Advice each : advice) {
            switch (each.kind()) {
                case HAZARD -> hazard(each, again);
                case HANGING, LOOSE_SCREWS, LOOSE_PARTS, NO_WAY_BACK, WEAR ->
                        message(each.signal(), stop(each.text()));
                case MAGNET -> {
                    if (first("magnet " + each.subject())) {
                        message(each.signal(), stop(each.text()));
                    } else {
                        repeat(each.signal(), "magnet", "magnet " + each.subject(), again);
                    }
                }
                case TETHER, KEEP_HOLD, HANDLING, INSPECT -> {
                    // told with the step
                }
            }
        }
        if (!again.isEmpty()) {
            List<String> words = new ArrayList<>();
            again.forEach((signal, what) -> words.add(signal.name() + " " + Names.and(what)));
            paper.para(INDENT, "        again", String.join("; ", words));
        }
    }

    /** Writes what belongs to a step itself. */
    void with(List<Advice> advice, IntUnaryOperator numberOf) {
        for (Advice each : advice) {
            switch (each.kind()) {
                case KEEP_HOLD ->
                        bullet(
                                each.text()
                                        + " (step "
                                        + numberOf.applyAsInt(each.until().orElse(0))
                                        + ").");
                case TETHER, HANDLING -> bullet(stop(each.text()));
                case INSPECT ->
                        bullet(
                                each.text().startsWith("Look")
                                        ? each.text()
                                        : "Look: " + each.text());
                case HAZARD, HANGING, LOOSE_SCREWS, LOOSE_PARTS, NO_WAY_BACK, WEAR, MAGNET -> {
                    // told before the step
                }
            }
        }
    }

    void bullet(String words) {
        paper.para(10, "        -", stop(words));
    }

    private void hazard(Advice advice, Map<Signal, List<String>> again) {
        Hazard hazard = Objects.requireNonNull(device.hazards().get(advice.subject()));
        if (first("hazard " + hazard.id())) {
            message(
                    hazard.signal(),
                    stop(hazard.nature())
                            + " "
                            + stop(hazard.consequence())
                            + " "
                            + stop(hazard.avoidance()));
        } else {
            repeat(hazard.signal(), hazard.id().replace('-', ' '), "hazard " + hazard.id(), again);
        }
    }

    private boolean first(String key) {
        boolean first = told.putIfAbsent(key, step) == null;
        if (first) {
            lately.put(key, step);
        }
        return first;
    }

    /** What can hurt is repeated at each step, what can only spoil things after some steps. */
    private void repeat(Signal signal, String words, String key, Map<Signal, List<String>> again) {
        Integer last = lately.get(key);
        if (signal != Signal.NOTICE || last == null || step - last > REMEMBERED) {
            lately.put(key, step);
            again.computeIfAbsent(signal, s -> new ArrayList<>())
                    .add(words + " (step " + told.get(key) + ")");
        }
    }

    /** Begins the way out or the way back; what was said before is said again. */
    void begin() {
        lately.clear();
    }

    private void message(Signal signal, String words) {
        Paper.Ink ink =
                switch (signal) {
                    case DANGER, WARNING -> Paper.Ink.GRAVE;
                    case CAUTION -> Paper.Ink.ALERT;
                    case NOTICE -> Paper.Ink.HEADING;
                };
        paper.para(INDENT, "        " + signal.name(), words, ink);
    }

    static String stop(String words) {
        return words.endsWith(".") || words.endsWith(":") ? words : words + ".";
    }

    /** Puts the advice of several acts together, each piece once. */
    static List<Advice> merge(List<List<Advice>> all, List<Integer> acts) {
        List<Advice> merged = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        for (int at : acts) {
            for (Advice advice : all.get(at)) {
                if (seen.add(advice.kind() + advice.text())) {
                    merged.add(advice);
                }
            }
        }
        merged.sort(java.util.Comparator.comparing(Advice::signal).thenComparing(Advice::kind));
        return merged;
    }
}
