/**
 * Judges plans: executes acts on the facts of a device and says whether each is allowed, what it
 * costs, and what the acts come to.
 *
 * <p>{@link reseat.simulate.Simulator} knows the model alone. It shares no code with the step graph
 * or the planner, so that its word on a plan is a second opinion. Everything it returns is
 * immutable; its sentences are written for the person at the bench.
 *
 * <pre>{@code
 * Verdict verdict = Simulator.judge(device, State.closed(), goal, Rules.none(), acts);
 * if (!verdict.valid()) {
 *     verdict.sentences().forEach(System.out::println);
 * }
 * }</pre>
 *
 * <p>Times are whole milliseconds.
 */
@NullMarked
package reseat.simulate;

import org.jspecify.annotations.NullMarked;
