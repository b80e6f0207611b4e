package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Hazard;
import reseat.model.Signal;
import reseat.plan.Advice;
import reseat.plan.Plan;
import reseat.plan.Rebuild;
import reseat.sheet.Caution;
import reseat.sheet.Entry;
import reseat.sheet.Head;
import reseat.text.NumberText;
import reseat.text.TimeText;

/** Creates the head of a sheet: its subject and the effort. */
record HeadMaker(Source source, Progress progress) {

    private static final String NOTICE =
            "The maker's service document and local codes take precedence over this sheet; the work"
                    + " must be done by qualified people. Order and times are estimates from a"
                    + " description, torques are the maker's. If the unit does not look as the"
                    + " sheet says, stop.";

    Head make() {
        Plan plan = source.plan();
        Device device = source.device();
        Rebuild rebuild = source.rebuild();
        TimeRange range = TimeRange.of(source);
        PowerWords power = new PowerWords(source, progress);
        return new Head(
                device.id(),
                device.variant(),
                device.name() + (device.maker().isEmpty() ? "" : ", " + device.maker()),
                source.names().goal(plan.request().goal()),
                plan.proved(),
                plan.totalMs(),
                plan.lowerBoundMs(),
                plan.acts().stream().mapToLong(CostedAct::ms).sum(),
                plan.acts().stream().mapToLong(CostedAct::setupMs).sum(),
                rebuild.restoreMs(),
                rebuild.setupMs(),
                rebuild.dwellMs(),
                range.leastMs(),
                range.mostMs(),
                entries(power, range),
                power.cautions(),
                hazards(),
                List.copyOf(device.supplies().values()),
                progress.staysOn(),
                NOTICE);
    }

    private List<Entry> entries(PowerWords power, TimeRange range) {
        Device device = source.device();
        Plan plan = source.plan();
        List<Entry> entries = new ArrayList<>();
        entries.add(
                new Entry(
                        "Goal",
                        source.names().goal(plan.request().goal()) + " and put everything back"));
        int open = plan.request().start().released().size();
        entries.add(
                new Entry(
                        "Device",
                        device.id()
                                + device.variant()
                                        .map(v -> ", variant " + v)
                                        .orElse(", base variant")
                                + (open == 0
                                        ? ""
                                        : "; arrives with "
                                                + NumberText.count(open, "joint", "joints")
                                                + " open")));
        entries.addAll(power.entries());
        times(entries, range);
        entries.add(new Entry("Proof", proof()));
        entries.add(new Entry("Covers", covers()));
        return entries;
    }

    private void times(List<Entry> entries, TimeRange range) {
        Plan plan = source.plan();
        Rebuild rebuild = source.rebuild();
        long apart = plan.acts().stream().mapToLong(act -> act.ms() + act.setupMs()).sum();
        long back = rebuild.restoreMs() + rebuild.setupMs();
        if (source.isIdle()) {
            return;
        }
        entries.add(
                new Entry(
                        "Time",
                        "About "
                                + TimeText.estimate(apart + back)
                                + " ("
                                + TimeText.range(range.leastMs(), range.mostMs())
                                + "): taking apart "
                                + TimeText.estimate(apart)
                                + ", putting back "
                                + TimeText.estimate(back)
                                + (rebuild.dwellMs() > 0
                                        ? "; besides, waiting "
                                                + TimeText.atLeast(rebuild.dwellMs())
                                        : "")
                                + ". Without the work itself and the tests."));
        entries.add(new Entry("", range.words()));
    }

    private String proof() {
        Plan plan = source.plan();
        if (plan.proved()) {
            return "Proved: no valid way costs less";
        }
        String why =
                switch (plan.ended()) {
                    case TIME -> "the time limit was reached";
                    case EXPANSIONS -> "the effort limit was reached";
                    case MEMORY -> "the memory limit was reached";
                    case CANCELLED -> "it was cancelled";
                    case PROVED -> "";
                };
        return "Not proved: a better way could save at most "
                + TimeText.unbroken(plan.totalMs() - plan.lowerBoundMs())
                + " ("
                + NumberText.of(Math.ceil(plan.gap() * 1000) / 10)
                + " %); "
                + why;
    }

    private String covers() {
        Plan plan = source.plan();
        if (source.isIdle()) {
            return "Nothing to do: the unit already meets the goal.";
        }
        if (plan.acts().isEmpty()) {
            return "Nothing to take apart: the unit already meets the goal. Steps 1 to "
                    + source.runs().size()
                    + " put it back.";
        }
        return "Steps 1 to "
                + source.runs().size()
                + ": "
                + NumberText.count(plan.releasedJoints().size(), "joint", "joints")
                + " released, "
                + NumberText.count(plan.movedParts().size(), "part", "parts")
                + " moved. Work on a part once it is out is not covered.";
    }

    private List<Caution> hazards() {
        Map<String, Caution> found = new LinkedHashMap<>();
        for (Run run : source.runs().teardown()) {
            for (int at : run.acts()) {
                for (Advice advice : source.notes().teardown().get(at)) {
                    if (advice.kind() == Advice.Kind.HAZARD) {
                        Hazard hazard =
                                Objects.requireNonNull(
                                        source.device().hazards().get(advice.subject()));
                        found.putIfAbsent(
                                hazard.nature(),
                                Cautions.of(hazard, Cautions.brief(hazard), run.number()));
                    }
                }
            }
        }
        List<Caution> sorted = new ArrayList<>();
        for (Signal signal : Signal.values()) {
            found.values().stream().filter(c -> c.signal() == signal).forEach(sorted::add);
        }
        return sorted;
    }
}
