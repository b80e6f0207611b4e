package reseat.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Joint;
import reseat.model.Origin;
import reseat.model.Problem;
import reseat.model.Rules;
import reseat.model.State;
import reseat.text.ListText;
import reseat.text.Nearest;

/** Checks that a request is valid for its device. */
final class RequestCheck {

    private static final Origin REQUEST = new Origin("(request)", 0, 0);

    private final Device device;
    private final List<Problem> problems = new ArrayList<>();

    private RequestCheck(Device device) {
        this.device = device;
    }

    static List<Problem> check(PlanRequest request) {
        RequestCheck check = new RequestCheck(request.device());
        if (request.device().supplies().size() > 64) {
            check.problem(
                    "a device can have at most 64 supplies, not "
                            + request.device().supplies().size());
        }
        check.start(request.start());
        if (check.problems.isEmpty()) {
            check.goal(request.goal());
            check.rules(request.rules());
        }
        return check.problems;
    }

    private void goal(Goal goal) {
        if (goal instanceof Goal.Free free) {
            known("part", device.parts().keySet(), free.targets());
            if (free.targets().contains(device.base())) {
                problem(
                        device.base()
                                + " is the base: everything is mounted to it, and it"
                                + " stays on the bench");
            }
        } else if (goal instanceof Goal.Reach reach) {
            known("joint", device.joints().keySet(), List.of(reach.joint()));
            released(reach.joint(), "be reached");
        }
    }

    /** Refuses to release a joint by an act of its own that only lets go. */
    private void released(String id, String what) {
        Joint joint = device.joints().get(id);
        if (joint != null && device.onlyLetsGo(joint)) {
            problem(
                    id
                            + " cannot "
                            + what
                            + ": nothing but moving "
                            + ListText.or(device.movedToLetGo(joint))
                            + " away releases it");
        }
    }

    private void start(State start) {
        known("joint", device.joints().keySet(), start.released());
        known("prepare act", device.prepares().keySet(), start.prepared());
        Set<String> placed = new HashSet<>();
        for (Set<String> place : start.places()) {
            known("part", device.parts().keySet(), place);
            for (String part : place) {
                if (!placed.add(part)) {
                    problem("part " + part + " cannot be in two places at the start");
                }
            }
        }
        if (problems.isEmpty()) {
            for (String id : start.released()) {
                Joint joint = device.joint(id);
                if (device.onlyLetsGo(joint) && start.places().stream().noneMatch(apart(joint))) {
                    released(id, "be released at the start");
                }
            }
            for (Joint joint : device.joints().values()) {
                if (!joint.slack()
                        && !start.released().contains(joint.id())
                        && crosses(joint, start)) {
                    problem(
                            "at the start, "
                                    + ListText.and(joint.holds())
                                    + " cannot lie in different places: "
                                    + joint.id()
                                    + " still holds them together");
                }
            }
        }
    }

    private Predicate<Set<String>> apart(Joint joint) {
        return place ->
                !place.contains(device.base()) && joint.holds().stream().anyMatch(place::contains);
    }

    private boolean crosses(Joint joint, State start) {
        Set<Set<String>> places = new HashSet<>();
        Set<String> home = Set.of();
        for (String part : joint.holds()) {
            Set<String> at =
                    start.places().stream()
                            .filter(place -> place.contains(part) && !place.contains(device.base()))
                            .findFirst()
                            .orElse(home);
            places.add(at);
        }
        return places.size() > 1;
    }

    private void rules(Rules rules) {
        known("joint", device.joints().keySet(), rules.forbiddenJoints());
        known("joint", device.joints().keySet(), rules.requiredJoints());
        known("part", device.parts().keySet(), rules.forbiddenParts());
        known("part", device.parts().keySet(), rules.requiredParts());
        known("part", device.parts().keySet(), rules.permittedRuin());
        known("tool", device.setup().tools(), rules.forbiddenTools());
        known("tool", device.setup().tools(), rules.requiredTools());
        rules.forbiddenActs().forEach(id -> act(id, false));
        rules.requiredActs().forEach(id -> act(id, true));
        if (rules.requiredParts().contains(device.base())) {
            problem(device.base() + " is the base and is never moved");
        }
        int required =
                rules.requiredTools().size()
                        + rules.requiredParts().size()
                        + rules.requiredActs().size();
        if (required > 62) {
            problem("at most 62 tools, parts and acts can be required, not " + required);
        }
    }

    private void act(String id, boolean required) {
        Act act;
        try {
            act = Act.parse(id);
        } catch (IllegalArgumentException e) {
            problem(String.valueOf(e.getMessage()));
            return;
        }
        if (act instanceof Act.Prepared prepared) {
            known("prepare act", device.prepares().keySet(), List.of(prepared.prepare()));
            if (!required) {
                problem(id + " cannot be forbidden: prepare acts are there for safety");
            }
        } else if (act instanceof Act.MoveParts move) {
            known("part", device.parts().keySet(), move.parts());
        } else {
            known("act", releases(), List.of(id));
            if (required) {
                released(((Act.Release) act).joint(), "be released by an act");
            }
        }
    }

    private List<String> releases() {
        return device.joints().values().stream()
                .flatMap(
                        joint ->
                                joint.ways().keySet().stream()
                                        .map(way -> new Act.Release(joint.id(), way).id()))
                .toList();
    }

    private void known(String what, Collection<String> known, Collection<String> wanted) {
        for (String id : wanted) {
            if (!known.contains(id)) {
                problem(
                        device.id()
                                + " has no "
                                + what
                                + " \""
                                + id
                                + "\""
                                + Nearest.aside(id, known));
            }
        }
    }

    private void problem(String message) {
        problems.add(Problem.error(REQUEST, message));
    }
}
