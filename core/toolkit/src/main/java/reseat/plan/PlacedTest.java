package reseat.plan;

import java.util.Optional;
import reseat.model.FunctionTest;

/**
 * A test of what was touched, and when it is made.
 *
 * @param at place of its act in the rebuild, counted from 0
 * @param closing id of the joint that cannot be opened again, or has to rest, and before which the
 *     test is made; empty if no such closing follows
 */
public record PlacedTest(FunctionTest test, int at, Optional<String> closing) {}
