package reseat.console.check;

import java.util.List;
import reseat.model.Problem;

/**
 * The result of checking one source.
 *
 * @param source name of the source
 * @param device id of the device; empty if none could be read
 * @param variants the variants that were checked; {@value Found#BASE} stands for the base device
 * @param found the findings, worst first; equal findings of several variants are reported once
 * @param failures checks that failed, in the order of the checks
 * @param problems problems of the source itself
 */
public record Checked(
        String source,
        String device,
        List<String> variants,
        List<Found> found,
        List<CheckFailure> failures,
        List<Problem> problems) {

    public Checked {
        variants = List.copyOf(variants);
        found = List.copyOf(found);
        failures = List.copyOf(failures);
        problems = List.copyOf(problems);
    }

    /** Returns whether the source could be read without errors. */
    public boolean sound() {
        return problems.stream().noneMatch(Problem::isError);
    }
}
