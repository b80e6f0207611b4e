package reseat.fasten;

import java.math.BigDecimal;

/**
 * A unit of torque.
 *
 * @param name as it is printed
 * @param newtonMetres how many newton metres it is, exactly; above 0
 * @param source where the factor comes from
 */
public record TorqueUnit(String name, BigDecimal newtonMetres, String source) {}
