package reseat.simulate;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Move;
import reseat.model.Prepare;
import reseat.model.Way;

/** One run of acts on a bench: the tool in hand, the posture, the acts done. */
final class Run {

    private final Bench bench;
    private final Device device;
    private final Gate gate;
    private final Words words;
    private final List<Step> steps = new ArrayList<>();
    private boolean worked;
    private String tool;
    private String posture;

    Run(Bench bench) {
        this.bench = bench;
        this.device = bench.device();
        this.gate = new Gate(bench);
        this.words = new Words(device);
        this.tool = device.hand();
        this.posture = device.usualPosture();
    }

    /** Carries acts out until one is refused. */
    Optional<Refusal> all(List<Act> acts) {
        for (int at = 0; at < acts.size(); at++) {
            Optional<String> why = one(acts.get(at));
            if (why.isPresent()) {
                return Optional.of(new Refusal(at, why.get()));
            }
        }
        return Optional.empty();
    }

    List<Step> steps() {
        return steps;
    }

    private Optional<String> one(Act act) {
        if (act instanceof Act.Prepared prepare) {
            return prepare(prepare);
        }
        if (act instanceof Act.Release release) {
            return unprepared(act)
                    .or(() -> gate.release(release.joint(), release.way()))
                    .or(() -> release(release));
        }
        List<String> parts = ((Act.MoveParts) act).parts();
        return unprepared(act).or(() -> gate.move(parts)).or(() -> move(parts));
    }

    /** Refuses work before the prepare acts that it needs. */
    private Optional<String> unprepared(Act act) {
        boolean inside = !device.power().isOutside(act);
        for (Prepare prepare : device.prepares().values()) {
            if (!bench.isPrepared(prepare.id()) && (inside || !prepare.onlyInside())) {
                return Optional.of(
                        Words.sentence(
                                "\""
                                        + words.prepare(prepare.id())
                                        + "\" must come before any "
                                        + (prepare.onlyInside()
                                                ? "act inside the device"
                                                : "other act")));
            }
        }
        return Optional.empty();
    }

    private Optional<String> prepare(Act.Prepared act) {
        Prepare prepare = device.prepares().get(act.prepare());
        if (prepare == null) {
            return Optional.of("The device has no prepare act \"" + act.prepare() + "\".");
        }
        if (worked) {
            return Optional.of(
                    Words.sentence(
                            "\""
                                    + words.prepare(act.prepare())
                                    + "\" must come before all work on the device"));
        }
        if (bench.isPrepared(act.prepare())) {
            return Optional.of(
                    Words.sentence("\"" + words.prepare(act.prepare()) + "\" is already done"));
        }
        bench.prepare(act.prepare());
        CostedAct costed = new CostedAct(act, tool, posture, prepare.ms(), prepare.restoreMs(), 0);
        steps.add(new Step(costed, Optional.empty(), List.of(), List.of(), List.of(), List.of()));
        return Optional.empty();
    }

    private Optional<String> release(Act.Release act) {
        Joint joint = device.joint(act.joint());
        Way way = Objects.requireNonNull(joint.ways().get(act.way()));
        List<Note> notes = notes(way.posture());
        CostedAct costed = charge(act, way.tool(), way.posture(), way.ms(), way.restoreMs());
        bench.release(joint.id());
        steps.add(new Step(costed, Optional.empty(), List.of(), List.of(), freedBy(joint), notes));
        return Optional.empty();
    }

    /** Finds the places away from the base that the release of a joint cut off from all others. */
    private List<String> freedBy(Joint joint) {
        Set<String> freed = new HashSet<>();
        for (String part : joint.holds()) {
            List<String> place = bench.sharing(part);
            boolean tethered = !place.containsAll(joint.holds());
            if (tethered && !bench.withBase(part) && bench.leadingOut(place).isEmpty()) {
                freed.addAll(place);
            }
        }
        return inOrder(freed);
    }

    private Optional<String> move(List<String> named) {
        List<String> parts = inOrder(Set.copyOf(named));
        long ms = 0;
        long restoreMs = 0;
        for (String part : parts) {
            ms = Math.max(ms, device.move(part).ms());
            restoreMs = Math.max(restoreMs, device.move(part).restoreMs());
        }
        List<Joint> giving = bench.giving(parts);
        for (Joint joint : giving) {
            ms += joint.firstWay().ms();
            restoreMs += joint.firstWay().restoreMs();
        }
        List<String> tethers =
                bench.leadingOut(parts).stream()
                        .filter(joint -> !joint.gives())
                        .map(Joint::id)
                        .toList();
        boolean off = tethers.isEmpty();
        ms += off ? 0 : device.setup().layAsideMs();
        Move how = device.move(parts.get(0));
        List<Note> notes = notes(how.posture());
        CostedAct costed =
                charge(new Act.MoveParts(parts), how.tool(), how.posture(), ms, restoreMs);
        bench.move(parts);
        List<String> freed = new ArrayList<>(off ? parts : List.of());
        for (Joint joint : giving) {
            bench.release(joint.id());
        }
        for (Joint joint : giving) {
            freed.addAll(freedBy(joint));
        }
        steps.add(
                new Step(
                        costed,
                        Optional.of(off ? Step.Departure.LIFTED_OFF : Step.Departure.LAID_ASIDE),
                        tethers,
                        giving.stream().map(Joint::id).toList(),
                        inOrder(Set.copyOf(freed)),
                        notes));
        return Optional.empty();
    }

    private List<Note> notes(String nextPosture) {
        return nextPosture.equals(posture) ? List.of() : new Warnings(bench).turningTo(nextPosture);
    }

    private CostedAct charge(
            Act act, String nextTool, String nextPosture, long ms, long restoreMs) {
        long setup =
                device.setup().setupMs(tool, posture, nextTool, nextPosture, bench.isLaidAside());
        worked = true;
        tool = nextTool;
        posture = nextPosture;
        return new CostedAct(act, nextTool, nextPosture, ms, restoreMs, setup);
    }

    private List<String> inOrder(Set<String> parts) {
        return device.parts().keySet().stream().filter(parts::contains).toList();
    }
}
