package reseat.simulate;

import java.util.List;
import java.util.Optional;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;

/**
 * Carries out acts on a device, one after the other, and judges them.
 *
 * <p>What is allowed:
 *
 * <ul>
 *   <li>A <b>prepare</b> act comes before any other act, once, unless it was done before the start.
 *       It is done by hand in the usual posture and never charged a set-up. If there are any acts,
 *       all prepare acts of the device must be among them or done before; those that only work
 *       inside the device needs, only if some act is not {@linkplain reseat.model.Power#isOutside
 *       outside}.
 *   <li>A <b>release</b> needs an unreleased joint, no part of its {@code under} in the place of
 *       its site, every supply that it {@linkplain reseat.model.Power needs} cut, and every joint
 *       that the way {@linkplain Device#strainedBy would be strained by} released. A supply is cut
 *       as soon as one joint that cuts it is released.
 *   <li>A <b>move</b> takes parts other than the base that unreleased joints hang together. Every
 *       unreleased joint to other parts has slack or gives, nothing outside the move is in the way
 *       of one of its parts in the same place, every supply that the parts need is cut, and all are
 *       moved with the same tool in the same posture. A joint to other parts that gives is released
 *       by the move, if what it needs itself was cut before. The move costs the longest of the
 *       parts' times and the longest of their restore times, and those of the joints that it
 *       releases. The parts lie in a new place of their own afterwards, whatever places they came
 *       from; if unreleased joints still lead out of it, laying them aside is added to the time.
 * </ul>
 *
 * <p>Set-ups are charged between consecutive acts, from the bare hand in the usual posture; nothing
 * is charged at the end. A change of posture costs more while a part lies aside. Acts that the
 * rules forbid are carried out and reported: the device allows them, the user does not.
 *
 * <p>Tools that rules forbid or require are those of releases and moves; a prepare act uses none. A
 * required part has been moved if it no longer lies with the base, a required joint is released if
 * it is so at the end; both may have happened before the start.
 *
 * <p>Time for n acts: O(n (joints + parts)²) at worst. Stateless.
 */
public final class Simulator {

    private Simulator() {}

    /**
     * Carries out acts until the first one that is not allowed.
     *
     * @param start where the unit stands
     * @param acts the acts in order
     * @return the verdict, without goal and rules; a sequence that lacks a prepare act is not valid
     * @throws IllegalArgumentException if {@link #faultsOf} finds the start impossible
     */
    public static Verdict simulate(Device device, State start, List<Act> acts) {
        // Permission to ruin is a rule, and there are no rules here.
        Rules rules = Rules.none().permitRuin(device.parts().keySet());
        return run(device, start, Optional.empty(), rules, acts);
    }

    /**
     * Carries out acts until the first one that is not allowed, and checks the acts and the final
     * state against a goal and rules.
     *
     * @param start where the unit stands
     * @param goal what is to hold at the end
     * @param rules what is forbidden, required and permitted
     * @param acts the acts in order; none if the goal holds from the start
     * @return the verdict
     * @throws IllegalArgumentException if {@link #faultsOf} finds the start impossible, if the goal
     *     names what the device does not have or frees the base, or if a joint or part that the
     *     rules require does not exist
     */
    public static Verdict judge(
            Device device, State start, Goal goal, Rules rules, List<Act> acts) {
        return run(device, start, Optional.of(goal), rules, acts);
    }

    /**
     * Finds what makes a state impossible for any unit of the device: unknown ids, a part in two
     * places, parts apart that a joint without slack still holds.
     *
     * @return sentences; empty if the state is possible
     */
    public static List<String> faultsOf(Device device, State start) {
        return StartFaults.of(device, start);
    }

    private static Verdict run(
            Device device, State start, Optional<Goal> goal, Rules rules, List<Act> acts) {
        List<String> faults = faultsOf(device, start);
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException(String.join(" ", faults));
        }
        Bench bench = new Bench(device, start);
        GoalCheck goalCheck = new GoalCheck(bench, rules);
        goal.ifPresent(goalCheck::verify);
        Run run = new Run(bench);
        Optional<Refusal> refusal = run.all(acts);
        List<Step> steps = run.steps();
        return new Verdict(
                refusal,
                steps,
                bench.state(),
                goal.flatMap(goalCheck::missing),
                new RuleCheck(device, rules).check(steps, bench));
    }
}
