package reseat.query;

import java.util.List;

/**
 * A test of what was touched.
 *
 * @param test id
 * @param pointer JSON Pointer for findings about this row
 * @param text what to do and what to expect
 * @param of ids of the parts and joints that it tests
 * @param needs ids of the parts and joints that must be back before it
 */
public record TestRow(
        String test, String pointer, String text, List<String> of, List<String> needs) {

    public TestRow {
        of = List.copyOf(of);
        needs = List.copyOf(needs);
    }
}
