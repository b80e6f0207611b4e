package reseat.simulate;

/**
 * The first act that the device does not allow.
 *
 * @param index place of the act in the sequence, from 0
 * @param why one sentence: the obstacle, and what to do first
 */
public record Refusal(int index, String why) {}
