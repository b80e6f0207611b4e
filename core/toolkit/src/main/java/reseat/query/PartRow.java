package reseat.query;

import java.util.List;
import java.util.Optional;
import reseat.model.Kind;

/**
 * A part.
 *
 * @param part id
 * @param pointer JSON Pointer for findings about this row
 * @param name display name
 * @param kind id of its kind
 * @param role its role, if the toolkit computes with it
 * @param under parts that are in the way of moving it
 * @param magnetic whether it catches loose screws, by its kind or when it is moved
 * @param electric whether a connector leads to it
 * @param spare order number
 * @param joints ids of the joints that hold it
 * @param tests ids of the tests that name it or a connector of it
 */
public record PartRow(
        String part,
        String pointer,
        String name,
        String kind,
        Optional<Kind.Role> role,
        List<String> under,
        boolean magnetic,
        boolean electric,
        Optional<String> spare,
        List<String> joints,
        List<String> tests) {

    public PartRow {
        under = List.copyOf(under);
        joints = List.copyOf(joints);
        tests = List.copyOf(tests);
    }
}
