package reseat.model;

import java.util.List;

/**
 * A test that shows whether what was touched works again.
 *
 * @param id id
 * @param text what to do and what to expect
 * @param of ids of the parts and joints that it tests; it is due when one of them was moved or
 *     released
 * @param needs ids of parts and joints that must be back before it can be made; the parts and
 *     joints of {@code of} always must
 */
public record FunctionTest(String id, String text, List<String> of, List<String> needs) {

    public FunctionTest {
        of = List.copyOf(of);
        needs = List.copyOf(needs);
    }
}
