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
import reseat.text.ListText;

/**
 * Decides whether an act is allowed in the current state of a unit; if not, a sentence gives the
 * reason.
 */
final class Gate {

    private final Bench bench;
    private final Device device;
    private final Words words;

    Gate(Bench bench) {
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
        if (!joint.ways().containsKey(way)) {
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
        return reach(joint);
    }

    /** Returns why a joint cannot be released now by any way; empty if it can. */
    Optional<String> reach(Joint joint) {
        if (bench.isReleased(joint.id())) {
            return because(words.joint(joint) + " is already released");
        }
        return covered(joint).or(() -> live(joint));
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

    private Optional<String> live(Joint joint) {
        for (String supply : device.power().needs(joint)) {
            if (bench.isLive(supply)) {
                List<String> isolators =
                        bench.isolators(supply).stream().map(words::joint).toList();
                return because(
                        isolators.isEmpty()
                                ? words.supply(supply)
                                        + " is always live, because no joint cuts it: "
                                        + words.joint(joint)
                                        + " cannot be released"
                                : words.supply(supply)
                                        + " is still live: release "
                                        + ListText.or(isolators)
                                        + " before "
                                        + words.joint(joint));
            }
        }
        return Optional.empty();
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
        return inTwo(group).or(() -> held(group)).or(() -> inTheWay(group)).or(() -> atOdds(group));
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
                bench.leadingOut(group).stream().filter(joint -> !joint.slack()).toList();
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
