package reseat.query;

import java.util.List;

/**
 * A test of what was touched.
 *
 * @param test id
 * @param pointer JSON Pointer of the fact that a finding would be about
 * @param text what to do and what must be seen
 * @param of ids of the parts and joints that it tests
 * @param needs ids of what must be back before it can be made
 */
public record TestRow(
        String test, String pointer, String text, List<String> of, List<String> needs) {

    public TestRow {
        of = List.copyOf(of);
        needs = List.copyOf(needs);
    }
}
