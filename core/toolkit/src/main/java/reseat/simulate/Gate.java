package reseat.simulate;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Move;
import reseat.model.Power;
import reseat.model.Way;
import reseat.text.ListText;

/**
 * Decides whether an act is allowed in the current state of a unit; if not, a sentence gives the
 * reason.
 */
final class Gate {

    private final BenchState bench;
    private final Device device;
    private final Words words;

    Gate(BenchState bench) {
        this.bench = bench;
        this.device = bench.device();
        this.words = new Words(device);
    }

    /** Returns why a way of a joint cannot be taken now; empty if it can. */
    Optional<String> release(String jointId, String way) {
        Joint joint = device.joints().get(jointId);
        if (joint == null) {
            return because("the device has no joint \"" + jointId + "\"");
        }
        Way taken = joint.ways().get(way);
        if (taken == null) {
            return because(
                    words.joint(joint)
                            + " is not released by \""
                            + way
                            + "\": take "
                            + ListText.or(
                                    joint.ways().keySet().stream()
                                            .map(w -> "\"" + w + "\"")
                                            .toList()));
        }
        return reach(joint).or(() -> strained(joint, taken));
    }

    /**
     * Returns why a joint cannot be released now, whatever the way; empty if it can, unless all its
     * ways are {@linkplain #strained strained}.
     */
    Optional<String> reach(Joint joint) {
        if (bench.isReleased(joint.id())) {
            return because(words.joint(joint) + " is already released");
        }
        if (device.onlyLetsGo(joint)) {
            return because("nothing but moving " + away(joint) + " releases " + words.joint(joint));
        }
        return covered(joint).or(() -> isOn(joint));
    }

    private String away(Joint joint) {
        return ListText.or(device.movedToLetGo(joint).stream().map(words::part).toList()) + " away";
    }

    /** Returns what would be strained if a joint were released now by a way; empty if nothing. */
    Optional<String> strained(Joint joint, Way way) {
        List<String> tight =
                device.strainedBy(joint, way).stream()
                        .filter(other -> !bench.isReleased(other))
                        .map(device::joint)
                        .map(words::joint)
                        .toList();
        if (tight.isEmpty()) {
            return Optional.empty();
        }
        boolean one = tight.size() == 1;
        return because(
                ListText.and(tight)
                        + (one ? " is" : " are")
                        + " still tight and would strain "
                        + words.joint(joint)
                        + (joint.ways().size() > 1 ? " by the way \"" + way.id() + "\"" : "")
                        + ": release "
                        + (one ? "it" : "them")
                        + " first");
    }

    private Optional<String> covered(Joint joint) {
        List<String> covers =
                joint.under().stream()
                        .filter(cover -> bench.together(cover, joint.site()))
                        .toList();
        if (covers.isEmpty()) {
            return Optional.empty();
        }
        if (covers.contains(joint.site())) {
            return because(
                    words.part(joint.site())
                            + " hides its own "
                            + joint.id()
                            + ", which cannot be reached");
        }
        // What lies on the bench cannot be taken away: its site has to leave instead.
        List<String> away = covers.contains(device.base()) ? List.of(joint.site()) : covers;
        return because(
                words.parts(covers)
                        + (covers.size() == 1 ? " still lies over " : " still lie over ")
                        + words.joint(joint)
                        + ": move "
                        + words.parts(away)
                        + " first");
    }

    private Optional<String> isOn(Joint joint) {
        String release = words.joint(joint);
        return isOn(
                device.power().why(joint),
                release + " cannot be released",
                release,
                "it holds " + words.parts(joint.holds()));
    }

    /**
     * Refuses work under power.
     *
     * @param needs what must be cut, and why
     * @param never what cannot be done if nothing cuts it
     * @param before what comes after the isolator
     * @param onCell why it is work on a cell
     */
    private Optional<String> isOn(
            List<Power.Need> needs, String never, String before, String onCell) {
        for (Power.Need need : needs) {
            if (!bench.isOn(need.supply())) {
                continue;
            }
            List<Joint> isolators = bench.isolators(need.supply());
            String supply = words.supply(need.supply());
            String why =
                    switch (need.rule()) {
                        case STATED -> "";
                        case POWER_FIRST -> " (inside the device, power comes off first)";
                        case WORK_ON_CELL -> " (" + onCell + ")";
                    };
            return because(
                    isolators.isEmpty()
                            ? supply + " is always on, because no joint cuts it: " + never
                            : supply
                                    + " is still on: "
                                    + cutting(isolators)
                                    + " before "
                                    + before
                                    + why);
        }
        return Optional.empty();
    }

    /** "release the cell plug or the fuse", "move the cell away". */
    private String cutting(List<Joint> isolators) {
        List<String> ways = new ArrayList<>();
        List<String> released =
                isolators.stream()
                        .filter(joint -> !device.onlyLetsGo(joint))
                        .map(words::joint)
                        .toList();
        if (!released.isEmpty()) {
            ways.add("release " + ListText.or(released));
        }
        isolators.stream()
                .filter(device::onlyLetsGo)
                .map(joint -> "move " + away(joint))
                .distinct()
                .forEach(ways::add);
        return ListText.or(ways);
    }

    /** Returns why parts cannot be moved together now; empty if they can. */
    Optional<String> move(List<String> parts) {
        Set<String> group = new LinkedHashSet<>();
        for (String part : parts) {
            if (!device.parts().containsKey(part)) {
                return because("the device has no part \"" + part + "\"");
            }
            if (part.equals(device.base())) {
                return because(words.part(part) + " is the base and stays on the bench");
            }
            if (!group.add(part)) {
                return because("the move names " + words.part(part) + " twice");
            }
        }
        return inTwo(group)
                .or(() -> held(group))
                .or(() -> inTheWay(group))
                .or(() -> isOn(group))
                .or(() -> atOdds(group));
    }

    /** Refuses parts that may not be moved under power, and contacts that may not part under it. */
    private Optional<String> isOn(Set<String> group) {
        List<String> parts = device.parts().keySet().stream().filter(group::contains).toList();
        String them = words.parts(parts);
        boolean one = parts.size() == 1;
        Optional<String> moved =
                isOn(
                        device.power().why(parts),
                        them + " cannot be moved",
                        them + (one ? " is" : " are") + " moved",
                        "the power comes from " + (one ? "it" : "one of them"));
        if (moved.isPresent()) {
            return moved;
        }
        for (Joint joint : bench.giving(group)) {
            String gives = words.joint(joint) + ", which lets go when " + them;
            Optional<String> parted =
                    isOn(
                            device.power().why(joint),
                            them + " cannot be moved, because " + words.joint(joint) + " lets go",
                            gives + (one ? " is" : " are") + " moved",
                            "it holds " + words.parts(joint.holds()));
            if (parted.isPresent()) {
                return parted;
            }
        }
        return Optional.empty();
    }

    /** Refuses parts that no chain of unreleased joints hangs together. */
    private Optional<String> inTwo(Set<String> group) {
        Set<String> reached = new LinkedHashSet<>();
        reached.add(group.iterator().next());
        boolean grown = true;
        while (grown) {
            grown = false;
            for (Joint joint : bench.unreleased()) {
                Set<String> inGroup = new HashSet<>(joint.holds());
                inGroup.retainAll(group);
                if (inGroup.stream().anyMatch(reached::contains)) {
                    grown |= reached.addAll(inGroup);
                }
            }
        }
        List<String> rest = new ArrayList<>(group);
        rest.removeAll(reached);
        return rest.isEmpty()
                ? Optional.empty()
                : because(
                        "no joint holds "
                                + words.parts(group.stream().filter(reached::contains).toList())
                                + " and "
                                + words.parts(rest)
                                + " together: move them one after the other");
    }

    /** Refuses parts that a rigid joint holds to others. */
    private Optional<String> held(Set<String> group) {
        List<Joint> rigid =
                bench.leadingOut(group).stream()
                        .filter(joint -> !joint.slack() && !joint.gives())
                        .toList();
        if (rigid.isEmpty()) {
            return Optional.empty();
        }
        Joint first = rigid.get(0);
        List<String> inside = first.holds().stream().filter(group::contains).toList();
        List<String> outside =
                first.holds().stream().filter(part -> !group.contains(part)).toList();
        int more = rigid.size() - 1;
        return because(
                words.parts(inside)
                        + (inside.size() == 1 ? " is" : " are")
                        + " still held to "
                        + words.parts(outside)
                        + " by "
                        + words.joint(first)
                        + (more == 0
                                ? ": release it first"
                                : " and " + more + " more: release them first"));
    }

    private Optional<String> inTheWay(Set<String> group) {
        for (String part : group) {
            List<String> covers =
                    device.part(part).under().stream()
                            .filter(cover -> !group.contains(cover) && bench.together(cover, part))
                            .toList();
            if (covers.contains(device.base())) {
                return because(
                        words.part(device.base())
                                + " is in the way of "
                                + words.part(part)
                                + " and never moves");
            }
            if (!covers.isEmpty()) {
                return because(
                        words.parts(covers)
                                + (covers.size() == 1 ? " is" : " are")
                                + " in the way of "
                                + words.part(part)
                                + ": move "
                                + words.parts(covers)
                                + " first");
            }
        }
        return Optional.empty();
    }

    /** Refuses parts that are moved with different tools or in different postures. */
    private Optional<String> atOdds(Set<String> group) {
        String first = group.iterator().next();
        for (String part : group) {
            Move one = device.move(first);
            Move other = device.move(part);
            if (!one.tool().equals(other.tool()) || !one.posture().equals(other.posture())) {
                return because(
                        words.part(first)
                                + " is moved "
                                + how(one)
                                + ", "
                                + words.part(part)
                                + " "
                                + how(other)
                                + ": they cannot be moved as one");
            }
        }
        return Optional.empty();
    }

    private String how(Move move) {
        return words.means(move.tool()) + " in the posture " + Words.posture(move.posture());
    }

    private static Optional<String> because(String text) {
        return Optional.of(Words.sentence(text));
    }
}
