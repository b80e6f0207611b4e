package reseat.job;

import java.util.Map;
import java.util.Optional;
import reseat.model.Ordered;

/**
 * One plan carried out on one unit.
 *
 * @param id id that the shop gives the job
 * @param unit the unit's own number, such as its serial number
 * @param device id of the device that the unit is one of
 * @param variant its variant; empty for the base device
 * @param cycles how often joints of this unit have been made, factory included, by id of the joint;
 *     for joints not listed, the device file applies
 */
public record Job(
        String id,
        String unit,
        String device,
        Optional<String> variant,
        Map<String, Integer> cycles) {

    public Job {
        cycles = Ordered.copyOf(cycles);
        if (id.isBlank() || unit.isBlank()) {
            throw new IllegalArgumentException("a job has an id and a unit");
        }
        cycles.forEach(
                (joint, made) -> {
                    if (made < 0) {
                        throw new IllegalArgumentException(
                                joint + " cannot have been made " + made + " times");
                    }
                });
    }
}
