package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Prepare;
import reseat.model.Way;
import reseat.plan.Fastening;
import reseat.plan.PlacedTest;
import reseat.plan.Plan;
import reseat.plan.Rebuild;
import reseat.plan.RebuildAct;

/** Combines acts that a person does as one, and numbers the steps. */
final class Runs {

    private final Device device;
    private final Rebuild back;
    private final List<Run> teardown = new ArrayList<>();
    private final List<Run> rebuild = new ArrayList<>();

    Runs(Plan plan, Rebuild back, CheckPoints checks) {
        this.device = plan.request().device();
        this.back = back;
        List<CostedAct> acts = plan.acts();
        int at = 0;
        while (at <= acts.size()) {
            checks.before(at).forEach(this::check);
            if (at == acts.size()) {
                break;
            }
            List<Integer> group = new ArrayList<>(List.of(at));
            CostedAct first = acts.get(at++);
            while (at < acts.size()
                    && checks.before(at).isEmpty()
                    && acts.get(at).tool().equals(first.tool())
                    && acts.get(at).posture().equals(first.posture())
                    && alike(first.act(), acts.get(at).act())) {
                group.add(at++);
            }
            teardown.add(
                    new Run(
                            teardown.size() + 1,
                            group,
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty()));
        }
        joinRebuild();
    }

    private void check(CheckPoint check) {
        teardown.add(
                new Run(
                        teardown.size() + 1,
                        List.of(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(check)));
    }

    List<Run> teardown() {
        return teardown;
    }

    List<Run> rebuild() {
        return rebuild;
    }

    /** Returns the number of the step of the teardown that an act belongs to. */
    int numberOf(int act) {
        return teardown.stream()
                .filter(run -> run.acts().contains(act))
                .findFirst()
                .orElseThrow()
                .number();
    }

    /** Returns the number of the step of the rebuild that an act of it belongs to. */
    int numberBack(int act) {
        return rebuild.stream()
                .filter(run -> run.acts().contains(act))
                .findFirst()
                .orElseThrow()
                .number();
    }

    /** Returns the number of the step at which a new part goes in. */
    OptionalInt numberOfNew(String part) {
        return rebuild.stream()
                .filter(run -> run.acts().stream().anyMatch(at -> isNew(part, at)))
                .mapToInt(Run::number)
                .findFirst();
    }

    private boolean isNew(String part, int at) {
        return back.acts().get(at).fresh().contains(part);
    }

    /** Returns whether the rebuild lays something for a joint before it closes. */
    boolean hasBed(String joint) {
        return back.acts().stream()
                .anyMatch(act -> act.kind() == RebuildAct.Kind.BED && act.joints().contains(joint));
    }

    /** Returns the number of steps. */
    int size() {
        return teardown.size() + rebuild.size();
    }

    private void joinRebuild() {
        List<RebuildAct> acts = back.acts();
        int at = 0;
        while (at < acts.size()) {
            Optional<Fastening> fastening = fastening(at);
            if (fastening.isPresent()) {
                byType(fastening.get());
                at = fastening.get().last() + 1;
                continue;
            }
            RebuildAct first = acts.get(at);
            if (nothingToDo(first)) {
                at++;
                continue;
            }
            int here = at;
            List<Integer> group = new ArrayList<>(List.of(at++));
            while (at < acts.size() && together(first, at)) {
                group.add(at++);
            }
            Optional<PlacedTest> test =
                    back.tests().stream().filter(placed -> placed.at() == here).findFirst();
            add(group, Optional.empty(), test);
        }
    }

    /**
     * One step for each type of screw. The type that is put in last comes last, for then all are
     * tightened.
     */
    private void byType(Fastening fastening) {
        Map<String, List<Integer>> types = new LinkedHashMap<>();
        for (int at = fastening.last(); at >= fastening.first(); at--) {
            String joint = back.acts().get(at).joints().get(0);
            String type = device.joint(joint).seat().orElseThrow().screw();
            types.computeIfAbsent(type, t -> new ArrayList<>()).add(0, at);
        }
        List<List<Integer>> steps = new ArrayList<>(types.values());
        Collections.reverse(steps);
        steps.forEach(acts -> add(acts, Optional.of(fastening), Optional.empty()));
    }

    /** A preparation that leaves nothing behind, such as wiping the seams clean. */
    private boolean nothingToDo(RebuildAct back) {
        if (!(back.act().orElse(null) instanceof Act.Prepared prepared)) {
            return false;
        }
        Prepare prepare = Objects.requireNonNull(device.prepares().get(prepared.prepare()));
        return prepare.restore().isEmpty() && prepare.restoreMs() == 0;
    }

    private boolean together(RebuildAct first, int at) {
        RebuildAct next = back.acts().get(at);
        return first.tool().equals(next.tool())
                && first.posture().equals(next.posture())
                && fastening(at).isEmpty()
                && first.kind() == next.kind()
                && first.on().equals(next.on())
                && first.act().isPresent()
                && next.act().isPresent()
                && alike(first.act().get(), next.act().get());
    }

    private Optional<Fastening> fastening(int at) {
        return back.fastenings().stream()
                .filter(f -> f.first() <= at && at <= f.last())
                .findFirst();
    }

    private void add(List<Integer> acts, Optional<Fastening> fastening, Optional<PlacedTest> test) {
        rebuild.add(
                new Run(
                        teardown.size() + rebuild.size() + 1,
                        acts,
                        fastening,
                        test,
                        Optional.empty()));
    }

    /** Joints of one kind between the same parts, released the same way; screws of one type. */
    private boolean alike(Act act, Act other) {
        if (!(act instanceof Act.Release a) || !(other instanceof Act.Release b)) {
            return false;
        }
        Joint first = device.joint(a.joint());
        Joint second = device.joint(b.joint());
        Way one = Source.way(device, a);
        Way next = Source.way(device, b);
        return first.kind().equals(second.kind())
                && first.holds().equals(second.holds())
                && one.kind().equals(next.kind())
                && one.ruins().equals(next.ruins())
                && first.seat().map(s -> s.screw()).equals(second.seat().map(s -> s.screw()));
    }
}
