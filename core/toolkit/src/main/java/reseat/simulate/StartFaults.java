package reseat.simulate;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.State;

/** Finds what makes a state impossible for any unit of a device. */
final class StartFaults {

    private StartFaults() {}

    static List<String> of(Device device, State start) {
        List<String> faults = new ArrayList<>();
        for (String joint : start.released()) {
            if (!device.joints().containsKey(joint)) {
                faults.add(
                        "The start releases joint \""
                                + joint
                                + "\", which the device does not have.");
            }
        }
        for (String prepare : start.prepared()) {
            if (!device.prepares().containsKey(prepare)) {
                faults.add(
                        "The start has prepare act \""
                                + prepare
                                + "\" done, which the device does not have.");
            }
        }
        Set<String> seen = new HashSet<>();
        for (Set<String> place : start.places()) {
            for (String part : place) {
                if (!device.parts().containsKey(part)) {
                    faults.add(
                            "The start places part \""
                                    + part
                                    + "\", which the device does not have.");
                } else if (!seen.add(part)) {
                    faults.add("The start places part \"" + part + "\" twice.");
                }
            }
        }
        if (faults.isEmpty()) {
            BenchState bench = new BenchState(device, start);
            rigidJointsApart(bench, faults);
            contactsNotApart(bench, faults);
        }
        return List.copyOf(faults);
    }

    /** Nothing puts parts back into the base's place, so that there they were never apart. */
    private static void contactsNotApart(BenchState bench, List<String> faults) {
        Words words = new Words(bench.device());
        for (Joint joint : bench.device().joints().values()) {
            if (bench.device().onlyLetsGo(joint)
                    && bench.isReleased(joint.id())
                    && joint.holds().stream().allMatch(bench::withBase)) {
                faults.add(
                        Words.sentence(
                                words.joint(joint)
                                        + " cannot be released at the start while "
                                        + words.parts(joint.holds())
                                        + " lie together"));
            }
        }
    }

    private static void rigidJointsApart(BenchState bench, List<String> faults) {
        Words words = new Words(bench.device());
        for (Joint joint : bench.unreleased()) {
            if ((!joint.slack() || joint.gives()) && bench.isApart(joint)) {
                faults.add(
                        Words.sentence(
                                words.parts(joint.holds())
                                        + " lie apart at the start although "
                                        + words.joint(joint)
                                        + " still holds them together"));
            }
        }
    }
}
