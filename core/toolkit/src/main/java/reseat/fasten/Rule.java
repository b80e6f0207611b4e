package reseat.fasten;

/**
 * A number for cases that no standard covers; see the table {@link FastenerTable#GUIDELINES}.
 *
 * @param id name of the rule
 * @param low the cautious value
 * @param high the value at the edge of good practice
 * @param source where it comes from
 */
public record Rule(String id, double low, double high, String source) {}
