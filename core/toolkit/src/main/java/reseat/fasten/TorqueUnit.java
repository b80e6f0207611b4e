package reseat.fasten;

import java.math.BigDecimal;

/**
 * A unit of torque.
 *
 * @param name name as printed
 * @param newtonMetres its exact value in newton metres; above 0
 * @param source where the factor comes from
 */
public record TorqueUnit(String name, BigDecimal newtonMetres, String source) {}
