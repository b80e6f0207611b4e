package reseat.plan;

import java.util.Optional;
import reseat.model.FunctionTest;

/**
 * A test of what was touched, and when to make it.
 *
 * @param before place of the act of the rebuild before which it is made, counted from 0; the number
 *     of acts if it is made at the end
 * @param closing id of the joint that cannot be opened again without destroying it and before which
 *     the test is made; empty at the end
 */
public record PlacedTest(FunctionTest test, int before, Optional<String> closing) {}
