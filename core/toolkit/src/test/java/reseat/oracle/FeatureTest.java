package reseat.oracle;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The random devices are such that each feature changes the optimum of many. */
class FeatureTest {

    private static final int DEVICES = 300;

    @Test
    void eachFeatureMattersOften() {
        Survey survey = new Survey();
        long first = Seeds.first();
        for (long seed = first; seed < first + Seeds.devices(DEVICES); seed++) {
            Case of = RandomDevices.of(seed);
            survey.add(of, Oracle.solve(of));
        }
        System.out.println("Random devices: " + survey);
        for (Feature feature : Feature.values()) {
            assertTrue(
                    Seeds.devices(DEVICES) < DEVICES
                            || survey.count(feature) * 12 >= survey.solvable(),
                    () -> feature + " matters too seldom: " + survey);
        }
    }
}
