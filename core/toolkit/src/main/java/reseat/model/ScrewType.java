package reseat.model;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A type of screw, by what a person sees and orders.
 *
 * @param id what files, plans and rules name it by
 * @param thread thread designation ("M1.6", "M2x0.4", "S0.8", "ST1.8" for a thread-forming screw of
 *     1.8 mm)
 * @param lengthMm nominal length in millimetres, as the head form defines it
 * @param threadLengthMm length of thread in millimetres; empty if threaded to the head
 * @param head head form ("pan", "countersunk", "low-cap", "shoulder", "set")
 * @param headDiameterMm head diameter in millimetres; empty if unknown
 * @param headHeightMm head height in millimetres; empty if unknown
 * @param drive drive ("T5", "PH00", "H1.5", "JIS-S0")
 * @param strengthClass property class or grade ("8.8", "A2-70", "brass"); empty if unknown
 * @param finish finish or colour; empty if not stated
 * @param patch whether it carries a locking patch, which holds only once
 * @param spare order number; empty if none is known
 */
public record ScrewType(
        String id,
        String thread,
        double lengthMm,
        OptionalDouble threadLengthMm,
        String head,
        OptionalDouble headDiameterMm,
        OptionalDouble headHeightMm,
        String drive,
        Optional<String> strengthClass,
        String finish,
        boolean patch,
        Optional<String> spare) {}
