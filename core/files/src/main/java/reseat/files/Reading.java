package reseat.files;

import java.util.List;
import java.util.Optional;
import reseat.model.BadInputException;
import reseat.model.Device;
import reseat.model.Problem;

/**
 * The result of reading a device file.
 *
 * @param device the device; empty if and only if there is an error among the problems
 * @param problems all errors and warnings, sorted by location; if there are very many, the last one
 *     gives the number omitted
 * @param variants ids of the variants that the file defines, in its order; empty if it could not be
 *     read that far
 */
public record Reading(Optional<Device> device, List<Problem> problems, List<String> variants) {

    public Reading {
        problems = List.copyOf(problems);
        variants = List.copyOf(variants);
    }

    /**
     * Returns the device.
     *
     * @throws BadInputException with all problems if there is none
     */
    public Device orThrow() throws BadInputException {
        if (device.isEmpty()) {
            throw new BadInputException(problems);
        }
        return device.get();
    }
}
