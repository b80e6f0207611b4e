/**
 * Judges plans: executes acts on the facts of a device and determines whether each is allowed, what
 * it costs, and what the acts achieve.
 *
 * <p>{@link reseat.simulate.Simulator} depends on the model alone. It shares no code with the step
 * graph or the planner, so that its verdict on a plan is independent. Everything it returns is
 * immutable; its sentences are addressed to the person at the bench.
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
