package reseat.internal.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against best known values; skipped where the published instances are not at hand. */
class PublishedInstancesTest {

    private static final long EFFORT = 2_000_000;

    private static OrderProblem read(String name) throws IOException {
        String given = System.getProperty("reseat.sop", "");
        Path folder = given.isEmpty() ? Path.of("../../../shared/sop") : Path.of(given);
        Path file = folder.resolve(name + ".sop");
        assumeTrue(Files.isReadable(file), () -> "no " + file.toAbsolutePath().normalize());
        return SopFiles.read(file);
    }

    @ParameterizedTest
    @CsvSource({
        "ESC07, 2125",
        "ESC12, 1675",
        "ESC25, 1681",
        "ESC63, 62",
        "br17.10, 55",
        "ft53.4, 14425",
        "p43.4, 83005",
        "rbg109a, 1038",
        "ry48p.4, 31446",
        "R.200.100.60, 71749"
    })
    void provesTheOptimum(String name, long optimum) throws IOException {
        OrderResult result = OrderSolver.solve(read(name), Efforts.of(EFFORT));
        assertEquals(optimum, result.cost());
        assertTrue(result.proved());
    }

    @ParameterizedTest
    @CsvSource({
        "ft53.1, 7531",
        "ft70.3, 42535",
        "kro124p.1, 39420",
        "p43.1, 28140",
        "prob.42, 243",
        "ry48p.1, 15805"
    })
    void boundsWhatItCannotProve(String name, long bestKnown) throws IOException {
        OrderResult result = OrderSolver.solve(read(name), Efforts.of(EFFORT / 20));
        assertTrue(result.cost() >= bestKnown);
        assertTrue(result.lowerBound() <= bestKnown);
        assertTrue(result.cost() <= bestKnown * 1.2, () -> "cost " + result.cost());
    }
}
