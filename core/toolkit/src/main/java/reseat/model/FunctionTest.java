package reseat.model;

import java.util.List;

/**
 * A test that shows whether what was touched works again.
 *
 * @param id what files, plans and rules name it by
 * @param text what to do and what must be seen
 * @param of ids of the parts and joints that it tests; it is due when one of them was moved or
 *     released
 * @param needs ids of parts and joints that must be back before it can be made; the parts and
 *     joints of {@code of} always must
 * @param powered whether the device is switched on for it
 * @param at where it runs: {@link #BENCH}, or what the device is set on or in, such as "dock"
 * @param leak whether it shows that a seal is tight; it then comes after everything that could
 *     disturb the seal
 */
public record FunctionTest(
        String id,
        String text,
        List<String> of,
        List<String> needs,
        boolean powered,
        String at,
        boolean leak) {

    /** Where a test runs unless it says so. */
    public static final String BENCH = "bench";

    public FunctionTest {
        of = List.copyOf(of);
        needs = List.copyOf(needs);
    }

    /** Returns whether the device is set on or in something for it. */
    public boolean isDocked() {
        return !at.equals(BENCH);
    }
}
