package reseat.fasten;

import java.util.OptionalDouble;

/**
 * A property class or grade of screws; strengths in newtons per square millimetre.
 *
 * @param id such as 8.8, A2-70, brass
 * @param kind steel, stainless, brass, forming or a shop's own value
 * @param rmNominal nominal tensile strength
 * @param rmMin least tensile strength
 * @param yieldNominal nominal yield point or 0.2 % proof stress
 * @param yieldMin least yield point or 0.2 % proof stress
 * @param proof stress under proof load; empty if no standard gives one
 * @param torsionRatio breaking shear stress over tensile strength (X of ISO 898-7); empty if no
 *     standard gives one
 * @param diameterMaxMm largest diameter that the row holds for
 * @param source where the row comes from
 */
public record StrengthClass(
        String id,
        String kind,
        double rmNominal,
        double rmMin,
        double yieldNominal,
        double yieldMin,
        OptionalDouble proof,
        OptionalDouble torsionRatio,
        double diameterMaxMm,
        String source) {}
