package reseat.fasten;

import java.util.OptionalDouble;

/**
 * The material of a thread; strengths in newtons per square millimetre.
 *
 * @param id such as magnesium, pc-abs
 * @param group steel, iron, aluminium, magnesium, zinc, titanium, brass, thermoplastic or a shop's
 *     own value
 * @param rm tensile strength; empty if not stated
 * @param shear shear strength of a thread in it
 * @param flexModulus flexural modulus of thermoplastics
 * @param coreLow least core hole for forming screws, as a share of the screw diameter
 * @param coreHigh largest core hole for forming screws, as a share of the screw diameter
 * @param source where the row comes from
 */
public record Material(
        String id,
        String group,
        OptionalDouble rm,
        double shear,
        OptionalDouble flexModulus,
        OptionalDouble coreLow,
        OptionalDouble coreHigh,
        String source) {

    /** Returns whether it is a thermoplastic, where loads creep and threads are formed. */
    public boolean thermoplastic() {
        return group.equals("thermoplastic");
    }
}
