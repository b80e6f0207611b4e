package reseat.internal.sheet;

import java.util.List;
import java.util.Optional;
import reseat.plan.Fastening;
import reseat.plan.PlacedTest;

/**
 * Acts that are done as one, and become one step of a sheet.
 *
 * @param number number of the step, counted from 1 through teardown and rebuild
 * @param acts places of its acts in the teardown or the rebuild, in order
 * @param fastening the screws that it puts in, if it does
 * @param test the test that it is, if it is one
 * @param check the check that it is, if it is one; it has no acts then
 */
record Run(
        int number,
        List<Integer> acts,
        Optional<Fastening> fastening,
        Optional<PlacedTest> test,
        Optional<CheckPoint> check) {

    Run {
        acts = List.copyOf(acts);
    }

    /** Returns whether it puts in the last screws of those that are tightened together. */
    boolean isLastOfFastening() {
        return fastening.isPresent() && acts.contains(fastening.get().last());
    }

    int first() {
        return acts.get(0);
    }

    int last() {
        return acts.get(acts.size() - 1);
    }
}
