package reseat.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.internal.planner.Planning;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Goal;
import reseat.model.Problem;
import reseat.plan.Effort;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.plan.Plans;
import reseat.plan.Rebuild;
import reseat.plan.Watch;
import reseat.simulate.Simulator;
import reseat.simulate.Verdict;

/**
 * Finds the cheapest way to a goal: what leaves together, by which way, and in which order. Each
 * plan is verified by the simulator before it is returned.
 *
 * <p>Stateless; safe to share between threads. With a limit on expansions the same request gives
 * the same plan; with a time limit it may not. The time grows exponentially in the worst case; the
 * result states how far a plan may be from the optimum.
 */
public final class Planner implements Plans {

    /** Effort of putting the acts of a plan in a better order: a fraction of a second. */
    private static final long ORDER_EFFORT = 30_000;

    public Planner() {}

    @Override
    public PlanResult plan(PlanRequest request, Watch watch) {
        List<Problem> problems = request.problems();
        if (!problems.isEmpty()) {
            return new PlanResult.Refused(problems);
        }
        List<String> hopeless = hopeless(request);
        if (!hopeless.isEmpty()) {
            return new PlanResult.Impossible(hopeless);
        }
        PlanResult result = inBetterOrder(Planning.plan(request, watch, Planner::rebuild), watch);
        result.best().ifPresent(Planner::requireValid);
        if (result instanceof PlanResult.Found found) {
            result = new PlanResult.Found(EarlyCut.of(found.plan(), watch));
        }
        return result;
    }

    /**
     * Makes the rebuild of a plan, whoever made the plan: the maker that plans carry.
     *
     * @throws IllegalArgumentException if the plan is not valid for its device
     * @throws IllegalStateException if the simulator refuses the order that was found
     */
    public static Rebuild rebuild(Plan plan) {
        return RebuildOrder.of(plan);
    }

    /**
     * Puts the acts of an unproved plan in a better order, if there is one. Not after the time is
     * up or somebody cancelled.
     */
    private static PlanResult inBetterOrder(PlanResult result, Watch watch) {
        return result.best()
                .filter(plan -> !plan.proved())
                .filter(
                        plan ->
                                plan.ended() == Plan.Ended.EXPANSIONS
                                        || plan.ended() == Plan.Ended.MEMORY)
                .flatMap(plan -> inBetterOrder(plan, watch))
                .<PlanResult>map(PlanResult.Found::new)
                .orElse(result);
    }

    private static Optional<Plan> inBetterOrder(Plan plan, Watch watch) {
        PlanRequest request = plan.request();
        List<Act> acts = plan.acts().stream().map(CostedAct::act).toList();
        OrderRequest order =
                OrderRequest.of(request.device(), request.start(), acts)
                        .with(Effort.ofExpansions(ORDER_EFFORT));
        Watch cancelling =
                new Watch() {
                    @Override
                    public boolean cancelled() {
                        return watch.cancelled();
                    }
                };
        if (acts.size() > OrderRequest.MOST_ITEMS
                || !(ActOrder.unjudged(order, cancelling) instanceof OrderAnswer.Found found)
                || found.totalMs() >= plan.totalMs()) {
            return Optional.empty();
        }
        Verdict verdict = judge(request, found.order().stream().map(acts::get).toList());
        // the plan at hand is sound, so an order that the simulator does not like is left alone
        return verdict.valid() && verdict.totalMs() < plan.totalMs()
                ? Optional.of(
                        new Plan(
                                request,
                                verdict.acts(),
                                verdict.totalMs(),
                                plan.lowerBoundMs(),
                                verdict.totalMs() == plan.lowerBoundMs()
                                        ? Plan.Ended.PROVED
                                        : plan.ended(),
                                plan.expansions(),
                                Planner::rebuild))
                : Optional.empty();
    }

    private static Verdict judge(PlanRequest request, List<Act> acts) {
        return Simulator.judge(
                request.device(), request.start(), request.goal(), request.rules(), acts);
    }

    /** Returns why a sensible request is hopeless: it asks for what is released already. */
    private static List<String> hopeless(PlanRequest request) {
        List<String> reasons = new ArrayList<>();
        for (String prepare : request.start().prepared()) {
            String id = new Act.Prepared(prepare).id();
            if (request.rules().requiredActs().contains(id)) {
                reasons.add(id + " is required, but it is already done");
            }
        }
        for (String joint : request.start().released()) {
            if (request.goal().equals(new Goal.Reach(joint))) {
                reasons.add("joint " + joint + " is already released, so it cannot be reached");
            }
            for (String way : request.device().joint(joint).ways().keySet()) {
                String id = new Act.Release(joint, way).id();
                if (request.rules().requiredActs().contains(id)) {
                    reasons.add(id + " is required, but " + joint + " is already released");
                }
            }
        }
        return reasons;
    }

    /**
     * Verifies a plan with the simulator.
     *
     * @throws IllegalStateException if the simulator disagrees: one of the two is wrong, and it is
     *     unknown which
     */
    static void requireValid(Plan plan) {
        PlanRequest request = plan.request();
        List<Act> acts = plan.acts().stream().map(CostedAct::act).toList();
        Verdict verdict = judge(request, acts);
        if (!verdict.valid()) {
            throw new IllegalStateException(
                    "planner and simulator disagree, so there is no plan: "
                            + String.join(" ", verdict.sentences()));
        }
        if (verdict.totalMs() != plan.totalMs() || !verdict.acts().equals(plan.acts())) {
            throw new IllegalStateException(
                    "planner and simulator disagree on the cost, so there is no plan: "
                            + plan.totalMs()
                            + " ms against "
                            + verdict.totalMs()
                            + " ms");
        }
    }
}
