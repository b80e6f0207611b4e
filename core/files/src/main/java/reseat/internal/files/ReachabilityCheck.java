package reseat.internal.files;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import reseat.model.Joint;
import reseat.model.Part;
import reseat.text.ListText;

/** Reports what {@link Reachability} finds, with the circular chain of facts. */
final class ReachabilityCheck {

    private final Draft draft;
    private final Places places;
    private final Problems problems;
    private final Reachability reach;

    ReachabilityCheck(Draft draft, Numbered all, Places places, Problems problems) {
        this.draft = draft;
        this.places = places;
        this.problems = problems;
        this.reach = new Reachability(all);
    }

    void run() {
        if (reach.everythingComesApart()) {
            return;
        }
        for (Joint joint : draft.joints.values()) {
            if (!reach.canRelease(joint.id())) {
                problems.error(
                        places.at("/joints/" + joint.id()),
                        "joint "
                                + joint.id()
                                + " can never be released: "
                                + chain(joint.id(), true, draft.base));
            }
        }
        Set<String> stuck = new LinkedHashSet<>();
        for (Part part : draft.parts.values()) {
            if (!part.id().equals(draft.base) && !reach.canMove(part.id())) {
                stuck.add(part.id());
                problems.error(
                        places.at("/parts/" + part.id()),
                        "part "
                                + part.id()
                                + " can never be moved: "
                                + chain(part.id(), false, draft.base));
            }
        }
        pairs(stuck);
    }

    /** Two parts that can both be moved, but only ever together. One report per part is enough. */
    private void pairs(Set<String> stuck) {
        List<Part> movable =
                draft.parts.values().stream()
                        .filter(part -> !part.id().equals(draft.base) && !stuck.contains(part.id()))
                        .toList();
        for (int i = 0; i < movable.size(); i++) {
            for (int k = 0; k < i; k++) {
                Part one = movable.get(i);
                Part other = movable.get(k);
                if (!reach.canPart(one.id(), other.id())) {
                    problems.error(
                            places.at("/parts/" + one.id()),
                            "parts "
                                    + other.id()
                                    + " and "
                                    + one.id()
                                    + " can never be separated: "
                                    + chain(one.id(), false, other.id()));
                    break;
                }
            }
        }
    }

    private String chain(String start, boolean joint, String without) {
        List<String> ids = new ArrayList<>();
        List<String> facts = new ArrayList<>();
        String at = start;
        boolean atJoint = joint;
        while (!ids.contains(key(at, atJoint))) {
            ids.add(key(at, atJoint));
            if (!atJoint
                    && (at.equals(draft.base) || (!at.equals(start) && !isStuck(at, without)))) {
                return ListText.and(facts);
            }
            Reachability.Obstacle next =
                    atJoint
                            ? reach.obstacleTo(Objects.requireNonNull(draft.joints.get(at)))
                            : reach.obstacleTo(
                                    Objects.requireNonNull(draft.parts.get(at)),
                                    at.equals(without) ? start : without);
            facts.add(at + " " + next.how() + " " + next.id());
            if (next.last()) {
                return ListText.and(facts);
            }
            at = next.id();
            atJoint = next.joint();
        }
        List<String> ring = new ArrayList<>(ids.subList(ids.indexOf(key(at, atJoint)), ids.size()));
        ring.add(key(at, atJoint));
        return ListText.and(facts)
                + " ("
                + String.join(" → ", ring.stream().map(each -> each.substring(1)).toList())
                + ")";
    }

    private boolean isStuck(String part, String without) {
        return !reach.canMove(part) || !reach.canPart(part, without);
    }

    /** Parts and joints may share an id; a chain must not confuse them. */
    private static String key(String id, boolean joint) {
        return (joint ? "j" : "p") + id;
    }
}
