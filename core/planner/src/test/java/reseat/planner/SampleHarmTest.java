package reseat.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import reseat.files.DeviceFiles;
import reseat.files.Reading;
import reseat.given.Samples;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Rules;
import reseat.model.State;
import reseat.model.Supply;
import reseat.model.Way;
import reseat.plan.Effort;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.plan.RebuildAct;

/**
 * What would hurt a technician or a device, looked for in the plans of every single target of every
 * sample and variant, from the facts alone: neither the rules of power nor those of strain are
 * asked.
 */
class SampleHarmTest {

    private static final long SOME_PLAN = 300;

    @TestFactory
    List<DynamicTest> noPlanOfASampleDoesHarm() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Path file : Samples.devices()) {
            Reading base = DeviceFiles.read(file, Optional.empty(), Samples.families());
            List<Optional<String>> variants = new ArrayList<>(List.of(Optional.empty()));
            base.variants().forEach(variant -> variants.add(Optional.of(variant)));
            for (Optional<String> variant : variants) {
                Device device =
                        DeviceFiles.read(file, variant, Samples.families()).device().orElseThrow();
                device.parts().keySet().stream()
                        .filter(part -> !part.equals(device.base()))
                        .map(
                                part ->
                                        DynamicTest.dynamicTest(
                                                device + " " + part, () -> look(device, part)))
                        .forEach(tests::add);
            }
        }
        return tests;
    }

    private static void look(Device device, String part) {
        PlanRequest request =
                new PlanRequest(
                        device,
                        new Goal.Free(List.of(part)),
                        State.closed(),
                        Rules.none().permitRuin(device.parts().keySet()),
                        Effort.ofExpansions(SOME_PLAN));
        PlanResult result = new Planner().plan(request);
        if (result instanceof PlanResult.Found found) {
            assertEquals(List.of(), teardown(found.plan()));
            assertEquals(List.of(), rebuild(found.plan()));
        }
    }

    private static List<String> teardown(Plan plan) {
        Device device = plan.request().device();
        List<String> harm = new ArrayList<>();
        Set<String> released = new LinkedHashSet<>();
        for (CostedAct costed : plan.acts()) {
            Set<String> cut = cutBy(device, released);
            if (costed.act() instanceof Act.Release release) {
                Joint joint = device.joint(release.joint());
                boolean isolator = !joint.cuts().isEmpty();
                Way way = Optional.ofNullable(joint.ways().get(release.way())).orElseThrow();
                for (Supply supply : device.supplies().values()) {
                    boolean atCell = supply.of().filter(joint.holds()::contains).isPresent();
                    if (atCell && !isolator && !cut.contains(supply.id())) {
                        harm.add(release.id() + " at the live " + supply.id());
                    }
                }
                if (role(device, joint, Kind.Role.CONNECTOR) && !isolator && cut.isEmpty()) {
                    harm.add(release.id() + " is unplugged under power");
                }
                if (device.manipulation(way.kind()).forceful()) {
                    device.joints().values().stream()
                            .filter(screw -> role(device, screw, Kind.Role.SCREW))
                            .filter(screw -> !released.contains(screw.id()))
                            .filter(
                                    screw ->
                                            screw.holds().stream()
                                                            .filter(joint.holds()::contains)
                                                            .count()
                                                    > 1)
                            .forEach(s -> harm.add(release.id() + " against " + s.id()));
                }
                released.add(release.joint());
            } else if (costed.act() instanceof Act.MoveParts move) {
                for (Joint joint : device.joints().values()) {
                    if (joint.gives()
                            && joint.holds().stream().anyMatch(move.parts()::contains)
                            && !move.parts().containsAll(joint.holds())) {
                        released.add(joint.id());
                    }
                }
                for (Supply supply : device.supplies().values()) {
                    if (supply.of().filter(move.parts()::contains).isPresent()
                            && !cutBy(device, released).contains(supply.id())) {
                        harm.add(move.id() + " moves the live " + supply.id());
                    }
                }
            }
        }
        return harm;
    }

    private static Set<String> cutBy(Device device, Set<String> released) {
        Set<String> cut = new LinkedHashSet<>();
        released.forEach(id -> cut.addAll(device.joint(id).cuts()));
        return cut;
    }

    private static boolean role(Device device, Joint joint, Kind.Role role) {
        return device.kindOf(joint).role().equals(Optional.of(role));
    }

    /**
     * Nothing is switched on with an isolator open, no bed is laid under a part that lies on it.
     */
    private static List<String> rebuild(Plan plan) {
        Device device = plan.request().device();
        List<String> harm = new ArrayList<>();
        List<RebuildAct> acts = plan.rebuild().acts();
        Set<String> released = new LinkedHashSet<>(plan.releasedJoints());
        for (int at = 0; at < acts.size(); at++) {
            RebuildAct act = acts.get(at);
            List<RebuildAct> later = acts.subList(at + 1, acts.size());
            if (act.kind() == RebuildAct.Kind.SWITCH_ON) {
                later.stream()
                        .flatMap(each -> each.joints().stream())
                        .filter(id -> !device.joint(id).cuts().isEmpty())
                        .forEach(id -> harm.add("switched on while " + id + " is open"));
            }
            boolean live = act.on().stream().anyMatch(cutBy(device, released)::contains);
            if (act.kind() == RebuildAct.Kind.BED && live && isFlammable(device, act)) {
                harm.add("cleaner at " + act.joints() + " although its supply could be cut");
            }
        }
        return harm;
    }

    private static boolean isFlammable(Device device, RebuildAct act) {
        return act.consumes().stream()
                .map(use -> device.consumables().get(use.consumable()))
                .anyMatch(consumable -> consumable != null && consumable.flammable());
    }
}
