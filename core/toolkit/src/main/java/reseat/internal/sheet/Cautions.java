package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import reseat.model.Device;
import reseat.model.Hazard;
import reseat.model.Signal;
import reseat.plan.Advice;
import reseat.sheet.Caution;

/**
 * Turns advice into messages: each in full where it first applies, as a reminder later. Hazards to
 * people are repeated unless the step before has them; hazards to things are repeated after some
 * steps.
 */
final class Cautions {

    /** Number of steps after which a hazard to things is repeated. */
    private static final int REMEMBERED = 6;

    private final Device device;
    private final Map<String, Integer> first = new HashMap<>();
    private final Map<String, Integer> last = new HashMap<>();

    /** The messages before one step. */
    record Before(List<Caution> inFull, List<Caution> reminders) {}

    Cautions(Device device) {
        this.device = device;
    }

    /** Begins the teardown or the rebuild: everything said before needs a reminder. */
    void begin() {
        last.clear();
    }

    Before before(List<Advice> advice, int step) {
        Before before = new Before(new ArrayList<>(), new ArrayList<>());
        for (Advice each : advice) {
            switch (each.kind()) {
                case HAZARD -> {
                    Hazard hazard = Objects.requireNonNull(device.hazards().get(each.subject()));
                    add(of(hazard, brief(hazard), step), "hazard " + hazard.id(), before);
                }
                case MAGNET ->
                        add(
                                plain(each, "magnet near the screws", step),
                                "magnet " + each.subject(),
                                before);
                case HANGING, LOOSE_SCREWS, LOOSE_PARTS, NO_WAY_BACK, WEAR ->
                        before.inFull.add(plain(each, each.text(), step));
                case TETHER, KEEP_HOLD, HANDLING, INSPECT -> {
                    // a detail of the step itself
                }
            }
        }
        return before;
    }

    /** Adds messages that do not come from advice; each is known by its subject. */
    Before with(Before before, List<Caution> more) {
        for (Caution each : more) {
            add(each, "own " + each.subject(), before);
        }
        before.inFull.sort(Comparator.comparing(Caution::signal));
        return before;
    }

    private void add(Caution caution, String key, Before before) {
        int step = caution.step();
        Integer said = first.putIfAbsent(key, step);
        int since = step - last.getOrDefault(key, -REMEMBERED - 1);
        if (said == null) {
            before.inFull.add(caution);
        } else if (since > (caution.signal() == Signal.NOTICE ? REMEMBERED : 1)) {
            before.reminders.add(
                    new Caution(
                            caution.signal(),
                            caution.subject(),
                            caution.brief(),
                            caution.text(),
                            caution.hazard(),
                            said));
        } else if (caution.signal() == Signal.NOTICE) {
            return;
        }
        last.put(key, step);
    }

    private static Caution plain(Advice advice, String brief, int step) {
        return new Caution(
                advice.signal(),
                advice.subject(),
                brief,
                Source.sentence(advice.text()),
                Optional.empty(),
                step);
    }

    static Caution of(Hazard hazard, String brief, int step) {
        return new Caution(
                hazard.signal(),
                hazard.id(),
                brief,
                Source.sentence(hazard.nature())
                        + " "
                        + Source.sentence(hazard.consequence())
                        + " "
                        + Source.sentence(hazard.avoidance()),
                Optional.of(hazard),
                step);
    }

    static String brief(Hazard hazard) {
        String nature = hazard.nature();
        return nature.substring(0, 1).toLowerCase(Locale.ROOT) + nature.substring(1);
    }

    /** Returns the advice that belongs to a step itself, as sentences. */
    static List<String> details(List<Advice> advice, IntUnaryOperator stepOf) {
        List<String> details = new ArrayList<>();
        for (Advice each : advice) {
            switch (each.kind()) {
                case KEEP_HOLD ->
                        details.add(
                                each.text()
                                        + " (step "
                                        + stepOf.applyAsInt(each.until().orElseThrow())
                                        + ").");
                case TETHER, HANDLING -> details.add(Source.sentence(each.text()));
                case INSPECT ->
                        details.add(
                                Source.sentence(
                                        each.text().startsWith("Look")
                                                ? each.text()
                                                : "Look: " + each.text()));
                case HAZARD, HANGING, LOOSE_SCREWS, LOOSE_PARTS, NO_WAY_BACK, WEAR, MAGNET -> {
                    // comes before the step
                }
            }
        }
        return details;
    }

    /** Merges the advice of several acts without repeats, gravest first. */
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
        merged.sort(Comparator.comparing(Advice::signal).thenComparing(Advice::kind));
        return merged;
    }
}
