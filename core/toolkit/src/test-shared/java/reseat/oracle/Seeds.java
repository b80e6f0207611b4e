package reseat.oracle;

import java.util.Map;
import java.util.Optional;
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
    static Optional<AssertionError> check(Class<?> test, long seed, LongConsumer check) {
        try {
            check.accept(seed);
            return Optional.empty();
        } catch (AssertionError | RuntimeException e) {
            return Optional.of(
                    new AssertionError(
                            e
                                    + "\n\nRepeat: mvn -q -pl core/toolkit -am test -Dtest="
                                    + test.getSimpleName()
                                    + " -Dsurefire.failIfNoSpecifiedTests=false -Dreseat.devices=1 -Dreseat.seed="
                                    + seed
                                    + "\n\n"
                                    + RandomDevices.of(seed),
                            e));
        }
    }

    /** Tells whether as many failed as {@code -Dreseat.failures} wants to see; all by default. */
    static boolean enough(Map<Long, AssertionError> failures) {
        return failures.size() >= Integer.getInteger("reseat.failures", Integer.MAX_VALUE);
    }

    /** "expected: 1 but was: 2" stands at the end of the first line or two. */
    private static String lastWords(AssertionError e) {
        String text = String.valueOf(e.getMessage()).split("\n\nRepeat", 2)[0];
        return text.length() <= 120 ? text : "... " + text.substring(text.length() - 120);
    }

    /** Throws the first failure, with the seeds of all. */
    static void report(Map<Long, AssertionError> failures) {
        if (!failures.isEmpty()) {
            AssertionError first = failures.values().iterator().next();
            StringBuilder all = new StringBuilder("seeds that fail:\n");
            failures.forEach(
                    (seed, e) -> all.append(seed).append(": ").append(lastWords(e)).append('\n'));
            throw new AssertionError(all + "the first in full: " + first.getMessage(), first);
        }
    }
}
