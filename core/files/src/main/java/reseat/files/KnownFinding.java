package reseat.files;

import java.time.LocalDate;
import reseat.model.Origin;

/**
 * A finding that the shop has accepted for a time. It covers every finding of its check about its
 * subject in its device, in all variants, whatever their message.
 *
 * @param check id of the check
 * @param device id of the device
 * @param subject what the finding is about, as a JSON Pointer into the device file
 * @param reason why the shop accepts it
 * @param until the last day on which it is accepted
 * @param at location of the entry
 */
public record KnownFinding(
        String check, String device, String subject, String reason, LocalDate until, Origin at) {

    public KnownFinding {
        if (reason.isBlank()) {
            throw new IllegalArgumentException("a known finding must have a reason");
        }
    }
}
