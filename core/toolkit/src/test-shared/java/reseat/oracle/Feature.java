package reseat.oracle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Rules;
import reseat.model.State;
import reseat.model.Way;

/** What makes devices hard. Each can be switched off, to see whether the optimum depends on it. */
enum Feature {
    /** Off: no joint has slack. */
    SLACK {
        @Override
        boolean used(Case of, Masks masks) {
            long start = masks.encode(of.start());
            boolean used = false;
            for (int j = 0; j < masks.joints; j++) {
                used |= masks.slack[j];
            }
            return used && !masks.laidAside(start); // else the start could not be reached without
        }
    },

    /** Off: a joint through three or more parts is one joint per part, each to the site. */
    SHARED_SCREWS {
        @Override
        boolean used(Case of, Masks masks) {
            return of.device().joints().values().stream().anyMatch(j -> j.holds().size() > 2);
        }

        @Override
        Optional<Oracle.Optimum> without(Case of) {
            return Oracle.solve(split(of));
        }
    },

    /** Off: nothing needs a supply cut. */
    SUPPLIES {
        @Override
        boolean used(Case of, Masks masks) {
            return Arrays.stream(masks.power.ofJoint).anyMatch(needs -> needs != 0)
                    || Arrays.stream(masks.power.ofSet).anyMatch(needs -> needs != 0);
        }
    },

    /** Off: each joint has its first way alone. */
    WAYS {
        @Override
        boolean used(Case of, Masks masks) {
            return masks.ways.stream().anyMatch(ways -> ways.size() > 1)
                    && of.rules().requiredActs().stream().allMatch(act -> act.endsWith("/w0"));
        }
    },

    /** Off: parts are moved one at a time. */
    GROUPS {
        @Override
        boolean used(Case of, Masks masks) {
            return true;
        }
    },

    /** Off: the device is closed at the start. */
    HALF_OPEN {
        @Override
        boolean used(Case of, Masks masks) {
            return !of.start().released().isEmpty() || !of.start().places().isEmpty();
        }

        @Override
        Optional<Oracle.Optimum> without(Case of) {
            return Oracle.solve(of.with(new State(Set.of(), List.of(), of.start().prepared())));
        }
    },

    /** Off: nothing has to be cut before work inside; work on a cell and what is stated remain. */
    POWER_FIRST {
        @Override
        boolean used(Case of, Masks masks) {
            return (masks.power.first & ~masks.power.dropped) != 0;
        }
    },

    /** Off: no way is strained by anything. */
    STRAIN {
        @Override
        boolean used(Case of, Masks masks) {
            return masks.ways.stream()
                    .anyMatch(ways -> ways.stream().anyMatch(way -> way.strainedBy() != 0));
        }
    },

    /** Off: no joint lets go by itself. */
    GIVING {
        @Override
        boolean used(Case of, Masks masks) {
            return of.device().joints().values().stream().anyMatch(Joint::gives);
        }
    },

    /** Off: laying aside costs no more than lifting off. */
    LAY_ASIDE {
        @Override
        boolean used(Case of, Masks masks) {
            return of.device().setup().layAsideMs() > 0;
        }
    },

    /** Off: turning the device costs no more while a part lies aside. */
    TURN_OPEN {
        @Override
        boolean used(Case of, Masks masks) {
            return of.device().setup().turnOpenMs() > 0;
        }
    },

    /** Off: every plan needs all prepare acts. */
    INSIDE_PREPARES {
        @Override
        boolean used(Case of, Masks masks) {
            return of.device().prepares().values().stream()
                    .anyMatch(p -> p.onlyInside() && !of.start().prepared().contains(p.id()));
        }
    };

    /** Tells whether a case has the feature. */
    abstract boolean used(Case of, Masks masks);

    /** Returns the best plan with the feature switched off. */
    Optional<Oracle.Optimum> without(Case of) {
        return Oracle.solve(of, Set.of(this));
    }

    /**
     * Tells whether switching the feature off changes the least cost, or makes the goal impossible.
     */
    boolean matters(Case of, long optimum) {
        if (!used(of, new Masks(of.device()))) {
            return false;
        }
        Optional<Oracle.Optimum> then = without(of);
        return then.isEmpty() || then.get().ms() != optimum;
    }

    /** Returns a case with each joint through three or more parts replaced by several. */
    private static Case split(Case of) {
        Map<String, List<String>> by = new LinkedHashMap<>();
        for (Joint joint : of.device().joints().values()) {
            List<String> ids = new ArrayList<>();
            for (String part : joint.holds().subList(0, joint.holds().size() - 1)) {
                ids.add(joint.holds().size() == 2 ? joint.id() : joint.id() + "." + part);
            }
            by.put(joint.id(), ids);
        }
        Device old = of.device();
        Device device =
                Device.build(
                        old.id(),
                        facts -> {
                            facts.base(old.base())
                                    .hand(old.hand())
                                    .usualPosture(old.usualPosture())
                                    .setup(old.setup());
                            for (Kind.Scope scope : Kind.Scope.values()) {
                                old.kinds(scope).values().forEach(facts::add);
                            }
                            old.tools().values().forEach(facts::add);
                            old.supplies().values().forEach(facts::add);
                            old.prepares().values().forEach(facts::add);
                            old.parts().values().forEach(facts::add);
                            old.joints()
                                    .values()
                                    .forEach(joint -> split(joint, by).forEach(facts::add));
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
        State start =
                new State(
                        ids(by, of.start().released()), of.start().places(), of.start().prepared());
        return new Case(of.seed(), device, start, goal, rules);
    }

    private static List<Joint> split(Joint joint, Map<String, List<String>> by) {
        Map<String, Way> ways = new LinkedHashMap<>();
        joint.ways().forEach((id, way) -> ways.put(id, strainedBy(way, ids -> ids(by, ids))));
        List<Joint> pairs = new ArrayList<>();
        for (String part : joint.holds().subList(0, joint.holds().size() - 1)) {
            pairs.add(
                    new Joint(
                            by.getOrDefault(joint.id(), List.of()).get(pairs.size()),
                            joint.name(),
                            joint.kind(),
                            List.of(part, joint.site()),
                            joint.under(),
                            joint.slack(),
                            joint.gives(),
                            joint.needs(),
                            joint.cuts(),
                            ways,
                            Optional.empty(),
                            Optional.empty(),
                            1));
        }
        return pairs;
    }

    private static Way strainedBy(Way way, UnaryOperator<Set<String>> change) {
        return new Way(
                way.id(),
                way.kind(),
                way.tool(),
                way.posture(),
                way.ms(),
                way.restoreMs(),
                List.of(),
                way.ruins(),
                "",
                List.of(),
                List.of(),
                way.strainedBy()
                        .map(ids -> List.copyOf(change.apply(new LinkedHashSet<>(ids)))));
    }

    private static Set<String> ids(Map<String, List<String>> by, Set<String> joints) {
        Set<String> ids = new LinkedHashSet<>();
        joints.forEach(id -> ids.addAll(by.getOrDefault(id, List.of())));
        return ids;
    }

    private static Set<String> acts(Map<String, List<String>> by, Set<String> acts) {
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
