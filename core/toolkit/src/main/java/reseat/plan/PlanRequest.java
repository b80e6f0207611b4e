package reseat.plan;

import java.util.List;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Problem;
import reseat.model.Rules;
import reseat.model.State;

/**
 * What to plan.
 *
 * @param goal what to achieve
 * @param start the state of the unit
 * @param rules what is forbidden, required and permitted
 * @param effort limits on the search
 * @param leaveOpen whether the rebuild leaves open what was open at the start, instead of closing
 *     the unit whole
 */
public record PlanRequest(
        Device device, Goal goal, State start, Rules rules, Effort effort, boolean leaveOpen) {

    /** Creates a request whose rebuild closes the unit whole. */
    public PlanRequest(Device device, Goal goal, State start, Rules rules, Effort effort) {
        this(device, goal, start, rules, effort, false);
    }

    /** Returns a request for a closed device, no rules and the default effort. */
    public static PlanRequest of(Device device, Goal goal) {
        return new PlanRequest(device, goal, State.closed(), Rules.none(), Effort.DEFAULT);
    }

    public PlanRequest from(State newStart) {
        return new PlanRequest(device, goal, newStart, rules, effort, leaveOpen);
    }

    public PlanRequest with(Rules newRules) {
        return new PlanRequest(device, goal, start, newRules, effort, leaveOpen);
    }

    public PlanRequest with(Effort newEffort) {
        return new PlanRequest(device, goal, start, rules, newEffort, leaveOpen);
    }

    /** Returns a request whose rebuild leaves open what was open at the start. */
    public PlanRequest leavingOpen() {
        return new PlanRequest(device, goal, start, rules, effort, true);
    }

    /** Returns why the request is invalid for its device; empty if it can be planned. */
    public List<Problem> problems() {
        return RequestCheck.check(this);
    }
}
