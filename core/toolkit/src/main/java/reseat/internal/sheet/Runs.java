package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.List;
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

    /** Returns the number of steps. */
    int size() {
        return teardown.size() + rebuild.size();
    }

    private void joinRebuild() {
        List<RebuildAct> acts = back.acts();
        int at = 0;
        while (at <= acts.size()) {
            for (PlacedTest test : back.tests()) {
                if (test.before() == at) {
                    add(List.of(), Optional.empty(), Optional.of(test));
                }
            }
            if (at == acts.size()) {
                return;
            }
            if (nothingToDo(acts.get(at))) {
                at++;
                continue;
            }
            List<Integer> group = new ArrayList<>(List.of(at));
            Optional<Fastening> fastening = fastening(at);
            RebuildAct first = acts.get(at++);
            while (at < acts.size() && together(fastening, first, at)) {
                group.add(at++);
            }
            add(group, fastening, Optional.empty());
        }
    }

    /** A preparation that leaves nothing behind, such as wiping the seams clean. */
    private boolean nothingToDo(RebuildAct back) {
        if (!(back.act() instanceof Act.Prepared prepared)) {
            return false;
        }
        Prepare prepare = Objects.requireNonNull(device.prepares().get(prepared.prepare()));
        return prepare.restore().isEmpty() && prepare.restoreMs() == 0;
    }

    private boolean together(Optional<Fastening> fastening, RebuildAct first, int at) {
        RebuildAct next = back.acts().get(at);
        if (fastening.isPresent()) {
            return at <= fastening.get().last();
        }
        return first.tool().equals(next.tool())
                && first.posture().equals(next.posture())
                && fastening(at).isEmpty()
                && back.tests().stream().noneMatch(test -> test.before() == at)
                && alike(first.act(), next.act());
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
