package reseat.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import reseat.graph.Before;
import reseat.graph.Company;
import reseat.graph.Fact;
import reseat.graph.Group;
import reseat.graph.Needed;
import reseat.graph.StepGraph;
import reseat.graph.Work;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Rules;
import reseat.model.State;

/**
 * What the step graph calls needed is in every best plan of the oracle and comes before what it
 * must come before in every row of acts that the oracle's rules allow; what it calls impossible
 * never happens.
 */
class GraphAgainstOracleTest {

    private static final int DEVICES = 600;
    private static final int WALKS = 6;

    private int plans;
    private int works;
    private int steps;
    private int blocked;
    private int impossible;

    @Test
    void whatIsNeededIsInEveryBestPlan() {
        Map<Long, AssertionError> failures = new TreeMap<>();
        long first = Seeds.first();
        for (long seed = first; seed < first + Seeds.devices(DEVICES); seed++) {
            long each = seed;
            Seeds.check(getClass(), seed, this::plan).ifPresent(e -> failures.put(each, e));
        }
        Seeds.report(failures);
        System.out.printf(
                "Graph against oracle: %d best plans contain all %d needed works; %d of %d"
                        + " impossible goals explained%n",
                plans, works, blocked, impossible);
        assertTrue(
                Seeds.devices(DEVICES) < DEVICES || (plans > 200 && works > 600 && blocked > 20));
    }

    @Test
    void whatMustComeBeforeDoes() {
        Map<Long, AssertionError> failures = new TreeMap<>();
        long first = Seeds.first();
        for (long seed = first; seed < first + Seeds.devices(DEVICES); seed++) {
            long each = seed;
            Seeds.check(getClass(), seed, this::walk).ifPresent(e -> failures.put(each, e));
        }
        Seeds.report(failures);
        System.out.printf("Graph against oracle: %d random acts came in their order%n", steps);
        assertTrue(Seeds.devices(DEVICES) < DEVICES || steps > 10_000);
    }

    private void plan(long seed) {
        Case of = RandomDevices.of(seed);
        StepGraph graph = StepGraph.of(of.device(), of.start(), of.rules());
        Optional<Oracle.Optimum> optimum = Oracle.solve(of);
        if (optimum.isEmpty()) {
            impossible++;
            blocked +=
                    graph.blocked(of.goal())
                            .map(
                                    why -> {
                                        assertFalse(why.chain().isEmpty());
                                        return 1;
                                    })
                            .orElse(0);
            return;
        }
        assertEquals(Optional.empty(), graph.blocked(of.goal()));
        Needed needed = graph.neededFor(of.goal());
        assertTrue(needed.possible());
        if (optimum.get().acts().isEmpty()) {
            return;
        }
        Done done = new Done(of);
        optimum.get().acts().forEach(done::add);
        for (Work work : needed.works()) {
            assertTrue(done.contains(work), () -> work + " is not in " + optimum.get());
            works++;
        }
        for (Map.Entry<Work, List<Work>> entry : needed.justBefore().entrySet()) {
            int at = needed.works().indexOf(entry.getKey());
            assertTrue(
                    entry.getValue().stream().allMatch(w -> needed.works().indexOf(w) < at),
                    () -> needed.toString());
        }
        plans++;
    }

    private void walk(long seed) {
        Case of = RandomDevices.of(seed);
        StepGraph graph =
                StepGraph.of(
                        of.device(),
                        of.start(),
                        Rules.none().permitRuin(of.device().parts().keySet()));
        Random random = new Random(seed);
        for (int i = 0; i < WALKS; i++) {
            new Walk(of, graph, random).run();
        }
    }

    /** A random row of allowed acts, each held against what the graph says of it. */
    private final class Walk {
        private final Case of;
        private final StepGraph graph;
        private final Random random;
        private final Walker walker;
        private final Done done;

        Walk(Case of, StepGraph graph, Random random) {
            this.of = of;
            this.graph = graph;
            this.random = random;
            this.walker = new Walker(of);
            this.done = new Done(of);
            of.device().prepares().keySet().stream()
                    .filter(id -> !of.start().prepared().contains(id))
                    .forEach(id -> walker.take(new Act.Prepared(id)));
        }

        void run() {
            for (int tries = 0; tries < 60; tries++) {
                Act act = any();
                if (walker.take(act).isPresent()) {
                    check(act);
                    done.add(act);
                    steps++;
                }
            }
        }

        private Act any() {
            if (random.nextInt(3) > 0) {
                List<Joint> joints = List.copyOf(of.device().joints().values());
                Joint joint = joints.get(random.nextInt(joints.size()));
                List<String> ways = List.copyOf(joint.ways().keySet());
                return new Act.Release(joint.id(), ways.get(random.nextInt(ways.size())));
            }
            List<String> some = new ArrayList<>();
            List<String> parts = List.copyOf(of.device().parts().keySet());
            int bits =
                    random.nextBoolean()
                            ? 1 << random.nextInt(parts.size())
                            : 1 + random.nextInt((1 << parts.size()) - 1);
            for (int p = 0; p < parts.size(); p++) {
                if ((bits >> p & 1) != 0) {
                    some.add(parts.get(p));
                }
            }
            return new Act.MoveParts(some);
        }

        private void check(Act act) {
            isDone(graph.mustComeBefore(act), act);
            if (act instanceof Act.Release release) {
                isDone(graph.mustComeBefore(release.joint()), act);
                return;
            }
            Act.MoveParts move = (Act.MoveParts) act;
            for (String part : move.parts()) {
                isDone(graph.mustComeBefore(part), act);
                if (!done.contains(new Work.MoveOf(part))) {
                    together(move, part);
                }
            }
            Set<String> inOne = new HashSet<>(move.parts());
            assertTrue(
                    inOne.size() == 1
                            || graph.groups().stream()
                                    .map(Group::parts)
                                    .anyMatch(group -> group.containsAll(inOne)),
                    () -> move + " fits no group of " + graph.groups());
            parted(move);
        }

        private void isDone(Before before, Act act) {
            assertTrue(before.possible(), () -> act + " is called impossible");
            for (Work work : before.all()) {
                assertTrue(done.contains(work), () -> work + " must come before " + act);
            }
        }

        private void together(Act.MoveParts move, String part) {
            Company company = graph.leavesWith(part);
            assertTrue(move.parts().containsAll(company.always()), () -> company + " but " + move);
        }

        /** Whom the move parts for the first time could be parted. */
        private void parted(Act.MoveParts move) {
            State start = of.start();
            for (String part : move.parts()) {
                for (String other : of.device().parts().keySet()) {
                    if (!move.parts().contains(other)) {
                        Before before = graph.mustComeBefore(new Fact.Apart(part, other));
                        assertTrue(
                                before.possible(), () -> part + " and " + other + " in " + start);
                    }
                }
            }
        }
    }

    /** What was done, told as the graph tells works. */
    private static final class Done {
        private final Set<String> released = new HashSet<>();
        private final Set<String> moved = new HashSet<>();
        private final Device device;

        Done(Case of) {
            device = of.device();
            released.addAll(of.start().released());
        }

        void add(Act act) {
            if (act instanceof Act.Release release) {
                released.add(release.joint());
            } else if (act instanceof Act.MoveParts move) {
                moved.addAll(move.parts());
                device.joints().values().stream()
                        .filter(joint -> joint.letsGo(move.parts()))
                        .forEach(joint -> released.add(joint.id()));
            }
        }

        boolean contains(Work work) {
            return work instanceof Work.Release release
                    ? released.containsAll(release.joints())
                    : moved.contains(((Work.MoveOf) work).part());
        }
    }
}
