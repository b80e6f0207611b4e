package reseat.query;

import java.util.List;
import java.util.Optional;
import reseat.model.Kind;

/**
 * A joint.
 *
 * @param joint id
 * @param pointer JSON Pointer for findings about this row
 * @param name display name
 * @param kind id of its kind
 * @param role its role, if the toolkit computes with it
 * @param holds the parts that it holds
 * @param site the part that it is made to
 * @param under the parts that hide it
 * @param needs supplies to be cut before
 * @param cuts supplies that its release cuts
 * @param slack whether its parts can lie apart while connected
 * @param tests ids of the tests that name it
 */
public record JointRow(
        String joint,
        String pointer,
        String name,
        String kind,
        Optional<Kind.Role> role,
        List<String> holds,
        String site,
        List<String> under,
        List<String> needs,
        List<String> cuts,
        boolean slack,
        List<String> tests) {

    public JointRow {
        holds = List.copyOf(holds);
        under = List.copyOf(under);
        needs = List.copyOf(needs);
        cuts = List.copyOf(cuts);
        tests = List.copyOf(tests);
    }
}
