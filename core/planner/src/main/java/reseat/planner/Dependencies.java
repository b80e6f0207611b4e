package reseat.planner;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Joint;
import reseat.model.Part;
import reseat.model.Power;
import reseat.model.Way;
import reseat.plan.PlanRequest;

/**
 * Which acts of a plan make which later ones possible. The goal counts as an act after the last.
 * Valid plans only.
 */
final class Dependencies {

    /**
     * One act makes a later one possible.
     *
     * @param from index of the act that serves
     * @param to index of the act that is served; the number of acts for the goal
     * @param subject the joint or the part that links them
     * @param sentence why
     */
    record Link(int from, int to, String subject, String sentence) {}

    private final PlanRequest request;
    private final Device device;
    private final List<Act> acts;
    private final List<Link> links = new ArrayList<>();
    private final Map<String, Integer> releasedAt = new HashMap<>();

    Dependencies(PlanRequest request, List<Act> acts) {
        this.request = request;
        this.device = request.device();
        this.acts = acts;
        for (int k = 0; k < acts.size(); k++) {
            if (acts.get(k) instanceof Act.Release release) {
                released(k, release);
            } else if (acts.get(k) instanceof Act.MoveParts move) {
                moved(k, move);
            }
        }
        goal(acts.size(), request.goal());
        required(acts.size());
    }

    List<Link> after(int act) {
        return links.stream().filter(link -> link.from() == act).toList();
    }

    List<Link> before(int act) {
        return links.stream().filter(link -> link.to() == act).toList();
    }

    /** Returns the first act that cuts a supply, if there is one. */
    OptionalInt cutAt(String supply) {
        return cutter(supply).stream().mapToInt(Map.Entry::getValue).findFirst();
    }

    /** Explains why a part goes along in a move that matters for its other parts. */
    String goesAlong(int act, String part) {
        List<String> others =
                ((Act.MoveParts) acts.get(act))
                        .parts().stream().filter(other -> !other.equals(part)).toList();
        for (String other : others) {
            if (device.part(other).under().contains(part)) {
                return part + " lies over " + other + " and goes along with it";
            }
            for (Joint joint : device.joints().values()) {
                if (connected(act, joint)
                        && joint.holds().contains(part)
                        && joint.holds().contains(other)) {
                    return part
                            + " goes along with "
                            + other
                            + ", to which "
                            + joint.id()
                            + " holds it";
                }
            }
        }
        return part + " goes along with " + String.join(", ", others);
    }

    private boolean connected(int act, Joint joint) {
        return !request.start().released().contains(joint.id())
                && releasedAt.getOrDefault(joint.id(), Integer.MAX_VALUE) > act;
    }

    private void released(int k, Act.Release release) {
        Joint joint = device.joint(release.joint());
        String before = "before " + joint.id() + " can be released";
        reachable(k, joint.id(), before);
        Way way = Objects.requireNonNull(joint.ways().get(release.way()));
        unstrained(k, joint, way, before);
        releasedAt.put(joint.id(), k);
    }

    private void unstrained(int k, Joint joint, Way way, String before) {
        for (String tight : device.strainedBy(joint, way)) {
            Integer act = releasedAt.get(tight);
            if (act != null) {
                link(
                        act,
                        k,
                        tight,
                        tight
                                + " would strain "
                                + joint.id()
                                + " while tight and must be released "
                                + before);
            }
        }
    }

    private void reachable(int k, String id, String before) {
        Joint joint = device.joint(id);
        for (String cover : joint.under()) {
            parted(k, cover, joint.site(), cover + " lies over " + id, before);
        }
        cut(k, device.power().why(joint), before);
    }

    private void cut(int k, List<Power.Need> needs, String before) {
        for (Power.Need need : needs) {
            cutter(need.supply())
                    .ifPresent(
                            first ->
                                    link(
                                            first.getValue(),
                                            k,
                                            first.getKey(),
                                            first.getKey()
                                                    + " cuts "
                                                    + need.supply()
                                                    + ", which must be done "
                                                    + before
                                                    + because(need)));
        }
    }

    /** Returns the joint that is released first of those that cut a supply, with the act. */
    private Optional<Map.Entry<String, Integer>> cutter(String supply) {
        return releasedAt.entrySet().stream()
                .filter(entry -> device.joint(entry.getKey()).cuts().contains(supply))
                .min(Map.Entry.comparingByValue());
    }

    private static String because(Power.Need need) {
        return switch (need.rule()) {
            case STATED -> "";
            case POWER_FIRST -> ", because that is work inside the device";
            case WORK_ON_CELL -> ", because that is work on the source of " + need.supply();
        };
    }

    private void moved(int k, Act.MoveParts move) {
        Set<String> set = new HashSet<>(move.parts());
        String before = "before " + together(move.parts()) + " can be moved";
        cut(k, device.power().why(move.parts()), before);
        List<String> given = new ArrayList<>();
        for (Joint joint : device.joints().values()) {
            if (!joint.leadsOut(set)) {
                continue;
            }
            if (joint.gives() && !isReleased(joint)) {
                cut(k, device.power().why(joint), before);
                given.add(joint.id());
            } else if (!joint.slack() && !joint.gives()) {
                freed(k, joint, before);
            }
        }
        given.forEach(id -> releasedAt.put(id, k));
        for (String part : move.parts()) {
            for (String cover : device.part(part).under()) {
                if (!set.contains(cover)) {
                    parted(k, cover, part, cover + " lies over " + part, before);
                }
            }
        }
    }

    private boolean isReleased(Joint joint) {
        return releasedAt.containsKey(joint.id())
                || request.start().released().contains(joint.id());
    }

    private void freed(int k, Joint joint, String before) {
        Integer act = releasedAt.get(joint.id());
        if (act != null) {
            link(
                    act,
                    k,
                    joint.id(),
                    joint.id()
                            + " holds "
                            + (joint.holds().size() == 2
                                    ? String.join(" to ", joint.holds())
                                    : String.join(", ", joint.holds()) + " together")
                            + " and must be released "
                            + before);
        }
    }

    /**
     * Links the last act that moved one of two parts without the other, if there is one: only that
     * move would have separated them.
     */
    private void parted(int k, String part, String other, String why, String before) {
        for (int i = k - 1; i >= 0; i--) {
            if (acts.get(i) instanceof Act.MoveParts move
                    && move.parts().contains(part) != move.parts().contains(other)) {
                String mover = move.parts().contains(part) ? part : other;
                link(i, k, mover, why + ": " + mover + " must be moved " + before);
                return;
            }
        }
    }

    private static String together(List<String> parts) {
        int others = parts.size() - 1;
        return switch (others) {
            case 0 -> parts.get(0);
            case 1 -> parts.get(0) + " with " + parts.get(1);
            default -> parts.get(0) + " with " + others + " others";
        };
    }

    private void goal(int end, Goal goal) {
        if (goal instanceof Goal.Reach reach) {
            String before = "to reach " + reach.joint();
            reachable(end, reach.joint(), before);
            Joint joint = device.joint(reach.joint());
            joint.ways().values().stream()
                    .filter(
                            way ->
                                    device.strainedBy(joint, way).stream()
                                            .map(device::joint)
                                            .allMatch(this::isReleased))
                    .findFirst()
                    .ifPresent(way -> unstrained(end, joint, way, before));
        } else if (goal instanceof Goal.Teardown) {
            device.joints().values().forEach(joint -> freed(end, joint, "for a full teardown"));
            for (Part part : device.parts().values()) {
                parted(
                        end,
                        part.id(),
                        device.base(),
                        "a full teardown separates " + part.id() + " from every other part",
                        "for it");
            }
        } else if (goal instanceof Goal.Free free) {
            free.targets().forEach(target -> free(end, target));
        }
    }

    private void free(int end, String target) {
        List<String> spare = device.part(target).spareIncludes();
        String before = "to free " + target;
        for (Joint joint : device.joints().values()) {
            boolean out =
                    joint.holds().stream().anyMatch(p -> !p.equals(target) && !spare.contains(p));
            if (joint.holds().contains(target) && out) {
                freed(end, joint, before);
            }
        }
        parted(end, target, device.base(), target + " lies in the device", before);
        for (String other : device.parts().keySet()) {
            if (!other.equals(target) && !spare.contains(other)) {
                parted(end, target, other, target + " lies with " + other, before);
            }
        }
    }

    private void required(int end) {
        for (int k = 0; k < acts.size(); k++) {
            Act act = acts.get(k);
            if (request.rules().requiredActs().contains(act.id())) {
                link(k, end, act.id(), act.id() + " is required by the request");
            }
            if (act instanceof Act.Release release
                    && request.rules().requiredJoints().contains(release.joint())) {
                String joint = release.joint();
                link(k, end, joint, joint + " is required by the request to be released");
            }
            if (act instanceof Act.MoveParts move) {
                for (String part : move.parts()) {
                    if (request.rules().requiredParts().contains(part)) {
                        link(k, end, part, part + " is required by the request to be moved");
                    }
                }
            }
        }
    }

    private void link(int from, int to, String subject, String sentence) {
        links.add(new Link(from, to, subject, sentence));
    }
}
