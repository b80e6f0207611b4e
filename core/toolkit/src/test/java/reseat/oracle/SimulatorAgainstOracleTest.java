package reseat.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import reseat.model.Act;
import reseat.model.Joint;
import reseat.simulate.Simulator;
import reseat.simulate.Verdict;

/** The simulator and the oracle's own rules say the same of random acts on random devices. */
class SimulatorAgainstOracleTest {

    private int allowed;
    private int refused;
    private int valid;

    @Test
    void agreesOnWhatIsAllowedWhatItCostsAndWhereItEnds() {
        Map<Long, AssertionError> failures = new TreeMap<>();
        long first = Seeds.first();
        for (long seed = first;
                seed < first + Seeds.devices(1_500) && !Seeds.enough(failures);
                seed++) {
            long each = seed;
            Seeds.check(getClass(), seed, this::randomActs).ifPresent(e -> failures.put(each, e));
        }
        Seeds.report(failures);
        System.out.printf(
                "Simulator against oracle: %d acts allowed, %d refused, %d valid plans, no difference.%n",
                allowed, refused, valid);
        assertTrue(
                Seeds.devices(1_500) < 1_500
                        || (allowed > 5_000 && refused > 5_000 && valid > 300));
    }

    @Test
    void acceptsEveryPlanOfTheOracleAtItsCost() {
        Map<Long, AssertionError> failures = new TreeMap<>();
        long first = Seeds.first();
        for (long seed = first;
                seed < first + Seeds.devices(500) && !Seeds.enough(failures);
                seed++) {
            long each = seed;
            Seeds.check(getClass(), seed, this::oraclePlan).ifPresent(e -> failures.put(each, e));
        }
        Seeds.report(failures);
    }

    private void oraclePlan(long seed) {
        Case of = RandomDevices.of(seed);
        Optional<Oracle.Optimum> optimum = Oracle.solve(of);
        if (optimum.isPresent()) {
            Verdict verdict =
                    Simulator.judge(
                            of.device(), of.start(), of.goal(), of.rules(), optimum.get().acts());
            assertEquals(List.of(), verdict.sentences());
            assertTrue(verdict.valid());
            assertEquals(optimum.get().ms(), verdict.totalMs());
        }
    }

    private void randomActs(long seed) {
        Case of = RandomDevices.of(seed);
        Random random = new Random(seed);
        Walker walker = new Walker(of);
        List<Act> acts = new ArrayList<>();
        long total = 0;
        for (int tries = 0; tries < 30; tries++) {
            List<Act> open = walker.allowed();
            boolean any = open.isEmpty() || random.nextInt(5) < 3;
            Act act = any ? randomAct(of, random) : open.get(random.nextInt(open.size()));
            List<Act> longer = new ArrayList<>(acts);
            longer.add(act);
            Verdict verdict =
                    Simulator.judge(of.device(), of.start(), of.goal(), of.rules(), longer);
            OptionalLong ms = walker.take(act);
            assertEquals(
                    ms.isPresent(), verdict.allowed(), () -> longer + " " + verdict.sentences());
            if (ms.isPresent()) {
                allowed++;
                acts = longer;
                total += ms.getAsLong();
                assertEquals(longer, verdict.acts().stream().map(c -> c.act()).toList());
            } else {
                refused++;
                assertEquals(acts.size(), verdict.refusal().orElseThrow().index());
            }
            assertEquals(total, verdict.totalMs(), longer::toString);
            assertEquals(walker.state().released(), verdict.end().released());
            assertEquals(walker.state().places(), verdict.end().places());
            assertEquals(
                    walker.reached(),
                    verdict.goalMissing().isEmpty(),
                    () -> longer + " " + verdict.goalMissing());
            boolean good = ms.isPresent() && walker.valid();
            assertEquals(good, verdict.valid(), () -> longer + " " + verdict.sentences());
            valid += good ? 1 : 0;
        }
    }

    private static Act randomAct(Case of, Random random) {
        List<String> prepares = List.copyOf(of.device().prepares().keySet());
        if (!prepares.isEmpty() && random.nextInt(8) == 0) {
            return new Act.Prepared(prepares.get(random.nextInt(prepares.size())));
        }
        if (random.nextInt(3) > 0) {
            List<Joint> joints = List.copyOf(of.device().joints().values());
            Joint joint = joints.get(random.nextInt(joints.size()));
            List<String> ways = List.copyOf(joint.ways().keySet());
            return new Act.Release(joint.id(), ways.get(random.nextInt(ways.size())));
        }
        List<String> parts = List.copyOf(of.device().parts().keySet());
        List<String> some = new ArrayList<>();
        int bits =
                random.nextInt(2) == 0
                        ? 1 << random.nextInt(parts.size())
                        : 1 + random.nextInt((1 << parts.size()) - 1);
        for (int p = 0; p < parts.size(); p++) {
            if ((bits >> p & 1) != 0) {
                some.add(parts.get(p));
            }
        }
        return new Act.MoveParts(some);
    }
}
