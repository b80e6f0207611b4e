package reseat.console.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
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
    private final Set<String> told = new LinkedHashSet<>();

    AdvicePart(Device device, Paper paper) {
        this.device = device;
        this.paper = paper;
    }

    /** Writes what has to be known before a step. */
    void before(List<Advice> advice) {
        List<String> again = new ArrayList<>();
        for (Advice each : advice) {
            switch (each.kind()) {
                case HAZARD -> hazard(each, again);
                case HANGING, LOOSE_SCREWS, LOOSE_PARTS, NO_WAY_BACK, WEAR ->
                        message(each.signal(), each.text() + ".");
                case MAGNET -> {
                    if (told.add("magnet " + each.subject())) {
                        message(each.signal(), each.text() + ".");
                    } else {
                        again.add("magnet: guide each screw");
                    }
                }
                case TETHER, KEEP_HOLD, HANDLING, INSPECT -> {
                    // told with the step
                }
            }
        }
        if (!again.isEmpty()) {
            paper.para(8, "", "(again: " + String.join("; ", again) + ")");
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
                case TETHER, HANDLING -> bullet(each.text() + ".");
                case INSPECT -> bullet("Look: " + each.text() + ".");
                case HAZARD, HANGING, LOOSE_SCREWS, LOOSE_PARTS, NO_WAY_BACK, WEAR, MAGNET -> {
                    // told before the step
                }
            }
        }
    }

    void bullet(String words) {
        paper.para(10, "        -", words.endsWith("..") ? words.substring(0, words.length() - 1) : words);
    }

    private void hazard(Advice advice, List<String> again) {
        Hazard hazard = Objects.requireNonNull(device.hazards().get(advice.subject()));
        if (told.add("hazard " + hazard.id())) {
            message(
                    hazard.signal(),
                    stop(hazard.nature())
                            + " "
                            + stop(hazard.consequence())
                            + " "
                            + stop(hazard.avoidance()));
        } else {
            again.add(hazard.signal().name() + " " + hazard.nature().toLowerCase(java.util.Locale.ROOT));
        }
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

    private static String stop(String words) {
        return words.endsWith(".") ? words : words + ".";
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
        merged.sort(
                java.util.Comparator.comparing(Advice::signal).thenComparing(Advice::kind));
        return merged;
    }
}
