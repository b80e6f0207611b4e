package reseat.devicechecks.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Part;
import reseat.model.Power;
import reseat.model.Severity;
import reseat.model.Supply;
import reseat.plan.Plan;
import reseat.text.ListText;

/** Looks at what is touched while a supply is on. */
final class PowerCheck implements Check {

    private static final CheckInfo CELL =
            new CheckInfo(
                    "live-cell-work",
                    "Work on a live cell",
                    "A part that a supply comes from, or a joint that holds it, that is moved or released while that supply is on and that is not on the way to its isolator. With a plan, by its acts; else by what the device file says need not be cut.",
                    "A short at the cell burns. Cut first what can be cut: common practice, no source.",
                    Severity.ERROR,
                    List.of("power", "safety", "cells"),
                    List.of());

    private static final CheckInfo NEVER =
            new CheckInfo(
                    "supply-not-cut",
                    "Inside work with a supply on",
                    "A plan that goes inside the device while a supply is on that is to be cut first, because the device file says so or because nothing reaches its isolator.",
                    "A tool that slips on a live board destroys it, and can start a fire. Common practice, no source.",
                    Severity.WARNING,
                    List.of("power", "safety"),
                    List.of(),
                    Set.of(CheckInfo.Need.PLAN),
                    CheckInfo.API);

    private final CheckInfo info;

    private PowerCheck(CheckInfo info) {
        this.info = info;
    }

    /** Returns both checks. */
    static List<Check> all() {
        return List.of(new PowerCheck(CELL), new PowerCheck(NEVER));
    }

    @Override
    public CheckInfo info() {
        return info;
    }

    @Override
    public List<Finding> run(CheckInput input) {
        if (info.id().equals(NEVER.id())) {
            return input.plan().map(plan -> notCut(input, plan)).orElse(List.of());
        }
        return input.plan().map(plan -> live(input, plan)).orElseGet(() -> waived(input));
    }

    private static List<Finding> live(CheckInput input, Plan plan) {
        Device device = input.device();
        List<Finding> found = new ArrayList<>();
        for (LiveActs.Live act : LiveActs.of(plan)) {
            for (Supply supply : device.supplies().values()) {
                // a file that does not say which cell it comes from is read by its names
                Optional<String> cell =
                        IsolatorCheck.sources(device, supply.id()).stream()
                                .filter(id -> touches(device, act.act(), id))
                                .findFirst();
                if (cell.isPresent()
                        && act.live().contains(supply.id())
                        && !onTheWay(device.power(), supply.id(), act.act())) {
                    found.add(
                            input.finding(act.pointer())
                                    .evidence("act " + act.act().id())
                                    .says(
                                            "The plan works on "
                                                    + cell.get()
                                                    + " while "
                                                    + supply.id()
                                                    + ", which comes from it, is on.",
                                            remedy(device, supply.id())));
                }
            }
        }
        return found;
    }

    private static List<Finding> waived(CheckInput input) {
        Device device = input.device();
        List<Finding> found = new ArrayList<>();
        for (Joint joint : input.jointsInView()) {
            add(
                    input,
                    "/joints/" + joint.id(),
                    joint.id(),
                    joint.holds(),
                    device.power().waived(joint),
                    found);
        }
        for (Part part : device.parts().values()) {
            add(
                    input,
                    "/parts/" + part.id(),
                    part.id(),
                    List.of(part.id()),
                    device.power().waived(part),
                    found);
        }
        return found;
    }

    private static void add(
            CheckInput input,
            String pointer,
            String id,
            List<String> parts,
            List<String> waived,
            List<Finding> found) {
        for (String supply : waived) {
            Optional<String> cell =
                    Optional.ofNullable(input.device().supplies().get(supply))
                            .flatMap(Supply::of)
                            .filter(parts::contains);
            if (cell.isPresent()) {
                found.add(
                        input.finding(pointer + "/needs")
                                .says(
                                        id
                                                + " is work on "
                                                + cell.get()
                                                + ", and the device file says that "
                                                + supply
                                                + ", which comes from it, need not be cut.",
                                        "Leave needs out, or name " + supply + " in it."));
            }
        }
    }

    private static boolean touches(Device device, Act act, String part) {
        return act instanceof Act.Release release
                ? device.joint(release.joint()).holds().contains(part)
                : ((Act.MoveParts) act).parts().contains(part);
    }

    private static boolean onTheWay(Power power, String supply, Act act) {
        return act instanceof Act.Release release
                ? power.jointsOnTheWay(supply).contains(release.joint())
                : ((Act.MoveParts) act)
                        .parts().stream().anyMatch(power.partsOnTheWay(supply)::contains);
    }

    /** One finding a supply: it names the acts, and is about the first. */
    private static List<Finding> notCut(CheckInput input, Plan plan) {
        Device device = input.device();
        Power power = device.power();
        Map<String, List<LiveActs.Live>> inside = new LinkedHashMap<>();
        for (LiveActs.Live act : LiveActs.of(plan)) {
            if (power.isOutside(act.act()) || saidByKind(device, act.act())) {
                continue;
            }
            for (String supply : act.live()) {
                if (wanted(device, supply) && !onTheWay(power, supply, act.act())) {
                    inside.computeIfAbsent(supply, id -> new ArrayList<>()).add(act);
                }
            }
        }
        List<Finding> found = new ArrayList<>();
        inside.forEach(
                (supply, acts) -> {
                    Finding.Draft draft = input.finding(acts.get(0).pointer());
                    acts.stream().limit(5).forEach(act -> draft.evidence("act " + act.act().id()));
                    if (acts.size() > 5) {
                        draft.evidence((acts.size() - 5) + " more");
                    }
                    String reason = power.dropped().getOrDefault(supply, "");
                    if (!reason.isEmpty()) {
                        draft.evidence(reason);
                    }
                    found.add(
                            draft.says(
                                    "The plan goes inside the device while " + supply + " is on.",
                                    remedy(device, supply)));
                });
        return found;
    }

    /** A supply that nothing cuts counts where a cell gives it; an adapter is unplugged before. */
    private static boolean wanted(Device device, String supply) {
        Supply stated = device.supplies().get(supply);
        boolean cuttable = device.power().cuttable().contains(supply);
        return cuttable
                ? device.power().first().contains(supply)
                : stated != null
                        && device.power().first().isEmpty()
                        && !IsolatorCheck.sources(device, supply).isEmpty();
    }

    private static boolean saidByKind(Device device, Act act) {
        if (act instanceof Act.Release release) {
            Joint joint = device.joint(release.joint());
            return joint.needs().isPresent() && joint.needs().equals(device.kindOf(joint).needs());
        }
        return ((Act.MoveParts) act)
                .parts().stream()
                        .map(device::part)
                        .allMatch(
                                part ->
                                        part.needs().isPresent()
                                                && part.needs()
                                                        .equals(device.kindOf(part).needs()));
    }

    private static String remedy(Device device, String supply) {
        return device.power()
                .isolators(supply)
                .findFirst()
                .map(
                        joint ->
                                (device.onlyLetsGo(joint)
                                                ? "Move "
                                                        + ListText.or(device.movedToLetGo(joint))
                                                        + " away first"
                                                : "Release " + joint.id() + " first")
                                        + ", and do not waive what needs it.")
                .orElse("State which joint cuts it, or a prepare act that does.");
    }
}
