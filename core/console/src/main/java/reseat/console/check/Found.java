package reseat.console.check;

import java.util.List;
import reseat.check.Finding;

/**
 * A finding, and the variants in which it was found.
 *
 * @param device id of the device
 * @param variants the variants in which it was found just so; {@value #BASE} stands for the base
 *     device
 * @param everywhere whether these are all that were checked
 */
public record Found(String device, Finding finding, List<String> variants, boolean everywhere) {

    /** Stands for the base device among variants. */
    public static final String BASE = "base";

    public Found {
        variants = List.copyOf(variants);
    }
}
