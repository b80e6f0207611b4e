package reseat.simulate;

/**
 * The first act that the device does not allow.
 *
 * @param index place of the act in the sequence, from 0
 * @param why one sentence: what stands in the way, and what to do first
 */
public record Refusal(int index, String why) {}
