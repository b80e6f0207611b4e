package reseat.oracle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Joint;
import reseat.model.Rules;
import reseat.model.State;
import reseat.model.Way;

/** What makes devices hard. Each can be switched off, to see whether the optimum depends on it. */
enum Feature {
    /** Off: no joint has slack. */
    SLACK {
        @Override
        Optional<Case> without(Case of) {
            Masks masks = new Masks(of.device());
            long start = masks.encode(of.start());
            boolean used = false;
            for (int j = 0; j < masks.joints; j++) {
                used |= masks.slack[j];
                boolean apart = (masks.holds[j] & ~masks.placeMask(start, masks.site[j])) != 0;
                if (masks.slack[j] && apart && (Masks.released(start) >> j & 1) == 0) {
                    return Optional.empty(); // the start could not be reached without slack
                }
            }
            return used
                    ? Optional.of(
                            joints(
                                    of,
                                    j ->
                                            List.of(
                                                    copy(
                                                            j, j.id(), j.holds(), false, j.needs().orElse(List.of()),
                                                            j.ways()))))
                    : Optional.empty();
        }
    },

    /** Off: a joint through three or more parts is one joint per part, each to the site. */
    SHARED_SCREWS {
        @Override
        Optional<Case> without(Case of) {
            if (of.device().joints().values().stream().noneMatch(j -> j.holds().size() > 2)) {
                return Optional.empty();
            }
            return Optional.of(joints(of, Feature::split));
        }
    },

    /** Off: no joint needs a supply cut. */
    SUPPLIES {
        @Override
        Optional<Case> without(Case of) {
            if (of.device().joints().values().stream().allMatch(j -> j.needs().orElse(List.of()).isEmpty())) {
                return Optional.empty();
            }
            return Optional.of(
                    joints(
                            of,
                            j ->
                                    List.of(
                                            copy(
                                                    j, j.id(), j.holds(), j.slack(), List.of(),
                                                    j.ways()))));
        }
    },

    /** Off: each joint has its first way alone. */
    WAYS {
        @Override
        Optional<Case> without(Case of) {
            boolean used =
                    of.device().joints().values().stream().anyMatch(j -> j.ways().size() > 1);
            boolean asked =
                    of.rules().requiredActs().stream().anyMatch(act -> !act.endsWith("/w0"));
            return used && !asked
                    ? Optional.of(
                            joints(
                                    of,
                                    j ->
                                            List.of(
                                                    copy(
                                                            j,
                                                            j.id(),
                                                            j.holds(),
                                                            j.slack(),
                                                            j.needs().orElse(List.of()),
                                                            firstOf(j.ways())))))
                    : Optional.empty();
        }
    },

    /** Off: parts are moved one at a time. */
    GROUPS {
        @Override
        Optional<Case> without(Case of) {
            return Optional.of(of);
        }
    },

    /** Off: the device is closed at the start. */
    HALF_OPEN {
        @Override
        Optional<Case> without(Case of) {
            return of.start().equals(State.closed())
                    ? Optional.empty()
                    : Optional.of(of.with(State.closed()));
        }
    };

    /** Returns the case with the feature switched off; empty if it does not have it. */
    abstract Optional<Case> without(Case of);

    /**
     * Tells whether switching the feature off changes the least cost, or makes the goal impossible.
     */
    boolean matters(Case of, long optimum) {
        Optional<Case> plain = without(of);
        if (plain.isEmpty()) {
            return false;
        }
        Optional<Oracle.Optimum> then =
                this == GROUPS ? Oracle.solveWithoutGroups(of) : Oracle.solve(plain.get());
        return then.isEmpty() || then.get().ms() != optimum;
    }

    private static Map<String, Way> firstOf(Map<String, Way> ways) {
        Way first = ways.values().iterator().next();
        return Map.of(first.id(), first);
    }

    private static List<Joint> split(Joint joint) {
        if (joint.holds().size() == 2) {
            return List.of(joint);
        }
        List<Joint> pairs = new ArrayList<>();
        for (String part : joint.holds().subList(0, joint.holds().size() - 1)) {
            pairs.add(
                    copy(
                            joint,
                            joint.id() + "." + part,
                            List.of(part, joint.site()),
                            joint.slack(),
                            joint.needs().orElse(List.of()),
                            joint.ways()));
        }
        return pairs;
    }

    private static Joint copy(
            Joint of,
            String id,
            List<String> holds,
            boolean slack,
            List<String> needs,
            Map<String, Way> ways) {
        return new Joint(
                id,
                id,
                of.kind(),
                holds,
                of.under(),
                slack,
                needs,
                of.cuts(),
                ways,
                Optional.empty(),
                Optional.empty(),
                1);
    }

    /**
     * Returns a case with each joint replaced by one or several, in the start, the goal and the
     * rules as well.
     */
    private static Case joints(Case of, Function<Joint, List<Joint>> replace) {
        Map<String, List<Joint>> by = new LinkedHashMap<>();
        of.device().joints().forEach((id, joint) -> by.put(id, replace.apply(joint)));
        Device old = of.device();
        Device device =
                Device.build(
                        old.id(),
                        facts -> {
                            facts.base(old.base())
                                    .hand(old.hand())
                                    .usualPosture(old.usualPosture())
                                    .setup(old.setup());
                            old.tools().values().forEach(facts::add);
                            old.supplies().values().forEach(facts::add);
                            old.prepares().values().forEach(facts::add);
                            old.parts().values().forEach(facts::add);
                            by.values().forEach(some -> some.forEach(facts::add));
                        });
        Goal goal =
                of.goal() instanceof Goal.Reach reach
                        ? new Goal.Reach(ids(by, Set.of(reach.joint())).iterator().next())
                        : of.goal();
        Rules rules =
                Rules.none()
                        .permitRuin(of.rules().permittedRuin())
                        .forbidActs(acts(by, of.rules().forbiddenActs()))
                        .forbidJoints(ids(by, of.rules().forbiddenJoints()))
                        .forbidParts(of.rules().forbiddenParts())
                        .forbidTools(of.rules().forbiddenTools())
                        .requireActs(acts(by, of.rules().requiredActs()))
                        .requireJoints(ids(by, of.rules().requiredJoints()))
                        .requireParts(of.rules().requiredParts())
                        .requireTools(of.rules().requiredTools());
        State start = new State(ids(by, of.start().released()), of.start().places());
        return new Case(of.seed(), device, start, goal, rules);
    }

    private static Set<String> ids(Map<String, List<Joint>> by, Set<String> joints) {
        Set<String> ids = new LinkedHashSet<>();
        joints.forEach(id -> by.getOrDefault(id, List.of()).forEach(joint -> ids.add(joint.id())));
        return ids;
    }

    private static Set<String> acts(Map<String, List<Joint>> by, Set<String> acts) {
        Set<String> ids = new LinkedHashSet<>();
        for (String act : acts) {
            if (Act.parse(act) instanceof Act.Release release) {
                ids(by, Set.of(release.joint()))
                        .forEach(id -> ids.add(new Act.Release(id, release.way()).id()));
            } else {
                ids.add(act);
            }
        }
        return ids;
    }
}
