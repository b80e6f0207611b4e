package reseat.console.sheet;

import java.util.List;
import java.util.Optional;
import reseat.plan.Fastening;
import reseat.plan.PlacedTest;

/**
 * One numbered line of a sheet: one act, or several that are done as one.
 *
 * @param number its number, counted from 1 through teardown and rebuild
 * @param acts places of its acts in the teardown or the rebuild
 * @param fastening the screws that it puts in, if it does
 * @param test the test that it is, if it is one; it has no acts then
 */
record Step(
        int number, List<Integer> acts, Optional<Fastening> fastening, Optional<PlacedTest> test) {

    Step {
        acts = List.copyOf(acts);
    }

    int first() {
        return acts.get(0);
    }

    int last() {
        return acts.get(acts.size() - 1);
    }
}
