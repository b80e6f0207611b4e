package reseat.query;

/**
 * A change of posture in a plan.
 *
 * @param index place of the act that it is made for, counted from 0
 * @param act stable id of that act
 * @param pointer JSON Pointer for findings about this row
 * @param from posture before
 * @param to posture after
 * @param loose whether the device is turned while a part hangs or lies loose in it, or screws do
 */
public record TurnRow(
        int index, String act, String pointer, String from, String to, boolean loose) {}
