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
import reseat.simulate.Refusal;
import reseat.simulate.Simulator;
import reseat.simulate.Verdict;

/** The simulator and the oracle's own rules say the same of random acts on random devices. */
class SimulatorAgainstOracleTest {

    private int allowed;
    private int refused;
    private int valid;
    private int broken;

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
                "Simulator against oracle: %d acts allowed, %d refused, %d valid plans,"
                        + " %d that do what must not be done, no difference.%n",
                allowed, refused, valid, broken);
        assertTrue(
                Seeds.devices(1_500) < 1_500
                        || (allowed > 5_000 && refused > 5_000 && valid > 300 && broken > 1_000));
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

    @Test
    void agreesOnBestPlansWithOneFault() {
        Map<Long, AssertionError> failures = new TreeMap<>();
        long first = Seeds.first();
        for (long seed = first;
                seed < first + Seeds.devices(500) && !Seeds.enough(failures);
                seed++) {
            long each = seed;
            Seeds.check(getClass(), seed, this::faultyPlans).ifPresent(e -> failures.put(each, e));
        }
        Seeds.report(failures);
        System.out.printf(
                "Simulator against oracle: %d plans with one fault allowed, %d refused, %d of them valid.%n",
                allowed, refused, valid);
        assertTrue(Seeds.devices(500) < 500 || (allowed > 300 && refused > 2_000 && valid > 300));
    }

    private void faultyPlans(long seed) {
        Case of = RandomDevices.of(seed);
        List<Act> best = Oracle.solve(of).map(Oracle.Optimum::acts).orElse(List.of());
        Random random = new Random(seed);
        for (int tries = 0; tries < 12 && !best.isEmpty(); tries++) {
            List<Act> acts = withFault(best, of, random);
            Walker walker = new Walker(of);
            long total = 0;
            int done = 0;
            for (Act act : acts) {
                OptionalLong ms = walker.take(act);
                if (ms.isEmpty()) {
                    break;
                }
                total += ms.getAsLong();
                done++;
            }
            Verdict verdict = Simulator.judge(of.device(), of.start(), of.goal(), of.rules(), acts);
            boolean all = done == acts.size();
            assertEquals(all, verdict.allowed(), () -> acts + " " + verdict.sentences());
            assertEquals(done, verdict.refusal().map(Refusal::index).orElse(acts.size()));
            assertEquals(total, verdict.totalMs(), acts::toString);
            assertEquals(walker.state(), verdict.end());
            assertEquals(walker.broken(), broken(verdict), () -> acts + " " + verdict.breaches());
            assertEquals(
                    all && walker.valid(), verdict.valid(), () -> acts + " " + verdict.sentences());
            allowed += all ? 1 : 0;
            refused += all ? 0 : 1;
            valid += all && walker.valid() ? 1 : 0;
        }
    }

    /** Drops an act, does it twice, swaps two, takes another way, another set or another act. */
    private static List<Act> withFault(List<Act> best, Case of, Random random) {
        List<Act> acts = new ArrayList<>(best);
        int at = random.nextInt(acts.size());
        Act act = acts.get(at);
        switch (random.nextInt(6)) {
            case 0 -> acts.remove(at);
            case 1 -> acts.add(random.nextInt(acts.size() + 1), act);
            case 2 -> acts.set(at, acts.set(random.nextInt(acts.size()), act));
            case 3 -> acts.add(at, randomAct(of, random));
            case 4 -> acts.set(at, randomAct(of, random));
            default -> acts.set(at, changed(act, of, random));
        }
        return acts;
    }

    private static Act changed(Act act, Case of, Random random) {
        if (act instanceof Act.Release release) {
            List<String> ways = List.copyOf(of.device().joint(release.joint()).ways().keySet());
            return new Act.Release(release.joint(), ways.get(random.nextInt(ways.size())));
        }
        if (act instanceof Act.MoveParts move) {
            List<String> some = new ArrayList<>(of.device().parts().keySet());
            String part = some.get(random.nextInt(some.size()));
            boolean more = !move.parts().contains(part);
            some.removeIf(p -> p.equals(part) ? !more : !move.parts().contains(p));
            return some.isEmpty() ? act : new Act.MoveParts(some);
        }
        return act;
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
            assertEquals(walker.state().prepared(), verdict.end().prepared());
            assertEquals(
                    walker.reached(),
                    verdict.goalMissing().isEmpty(),
                    () -> longer + " " + verdict.goalMissing());
            assertEquals(walker.broken(), broken(verdict), () -> longer + " " + verdict.breaches());
            broken += walker.broken() ? 1 : 0;
            boolean good = ms.isPresent() && walker.valid();
            assertEquals(good, verdict.valid(), () -> longer + " " + verdict.sentences());
            valid += good ? 1 : 0;
        }
    }

    private static boolean broken(Verdict verdict) {
        return verdict.breaches().stream().anyMatch(breach -> breach.at().isPresent());
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
