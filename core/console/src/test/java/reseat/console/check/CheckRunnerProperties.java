package reseat.console.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.files.CheckSource;
import reseat.model.Device;

/** What holds of every run. */
class CheckRunnerProperties {

    @Property(tries = 150)
    void threadsChangeNothing(
            @ForAll @IntRange(min = 0, max = 12) int sources,
            @ForAll @IntRange(min = 2, max = 6) int threads,
            @ForAll long seed) {
        List<CheckSource> made = sources(sources, new Random(seed));
        List<Check> checks = checks();

        CheckReport one = new CheckRunner(checks, 1, CheckWatch.NONE).run(made);
        CheckReport many = new CheckRunner(checks, threads, CheckWatch.NONE).run(made);

        assertEquals(one, many);
    }

    @Property(tries = 50)
    void theOrderOfChecksChangesNoFinding(
            @ForAll @IntRange(min = 0, max = 6) int sources, @ForAll long seed) {
        List<CheckSource> made = sources(sources, new Random(seed));
        // of two with one id the first counts, so that there the order matters
        List<Check> each = checks().subList(0, checks().size() - 1);
        List<Check> shuffled = new ArrayList<>(each);
        Collections.shuffle(shuffled, new Random(seed));

        List<List<Found>> told = found(new CheckRunner(each, 1, CheckWatch.NONE).run(made));
        List<List<Found>> other = found(new CheckRunner(shuffled, 2, CheckWatch.NONE).run(made));

        assertEquals(told, other);
    }

    private static List<List<Found>> found(CheckReport report) {
        return report.checked().stream().map(Checked::found).toList();
    }

    /** Some that find, some that find nothing, and some that fail on some devices. */
    private static List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        checks.add(Toys.everyJoint("every-joint"));
        checks.add(Toys.check(Toys.info("content"), input -> List.of()));
        checks.add(Toys.everyJoint("again"));
        checks.add(
                Toys.check(
                        Toys.info("lonely"),
                        input ->
                                input.device().joints().size() == 1
                                        ? List.of(input.finding("").says("Alone.", "Add a joint."))
                                        : List.of()));
        checks.add(Toys.check(Toys.info("unasked", CheckInfo.Need.PLAN), input -> List.of()));
        checks.add(
                Toys.check(
                        Toys.info("moody"),
                        input -> {
                            if (input.device().joints().size() % 2 == 0) {
                                throw new IllegalStateException("an even number of joints");
                            }
                            return List.of(input.finding("").says("Odd.", "Count again."));
                        }));
        checks.add(Toys.check(Toys.info("moody"), input -> List.of()));
        return checks;
    }

    private static List<CheckSource> sources(int count, Random random) {
        List<CheckSource> sources = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String name = "d" + i + ".yaml";
            if (random.nextInt(5) == 0) {
                sources.add(Toys.broken(name));
            } else {
                Device[] variants = new Device[1 + random.nextInt(3)];
                for (int v = 0; v < variants.length; v++) {
                    String[] joints = new String[random.nextInt(4)];
                    for (int j = 0; j < joints.length; j++) {
                        joints[j] = "j" + j;
                    }
                    variants[v] = v == 0 ? Toys.device(joints) : Toys.variant("v" + v, joints);
                }
                sources.add(Toys.source(name, variants));
            }
        }
        return sources;
    }
}
