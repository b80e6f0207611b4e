package reseat.oracle;

import java.util.function.LongConsumer;

/**
 * Which random devices a test looks at: as many as the test says, from seed 1, unless {@code
 * -Dreseat.seed} and {@code -Dreseat.devices} say otherwise.
 */
final class Seeds {

    private Seeds() {}

    static long first() {
        return Long.getLong("reseat.seed", 1);
    }

    static int devices(int usual) {
        return Integer.getInteger("reseat.devices", usual);
    }

    /** Runs a check on one seed; a failure tells the seed, the device and how to repeat it. */
    static void check(Class<?> test, long seed, LongConsumer check) {
        try {
            check.accept(seed);
        } catch (AssertionError | RuntimeException e) {
            throw new AssertionError(
                    e.getMessage()
                            + "\n\nRepeat: mvn -q -pl core/toolkit -am test -Dtest="
                            + test.getSimpleName()
                            + " -Dsurefire.failIfNoSpecifiedTests=false -Dreseat.devices=1 -Dreseat.seed="
                            + seed
                            + "\n\n"
                            + RandomDevices.of(seed),
                    e);
        }
    }
}
