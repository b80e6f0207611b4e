package reseat.internal.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import reseat.graph.Blocked;
import reseat.graph.StepGraph;
import reseat.internal.graph.Compiled;
import reseat.internal.order.Limits;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Prepare;
import reseat.model.Way;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.plan.Rebuilds;
import reseat.plan.Watch;

/**
 * From a request to a result: numbers in, acts out.
 *
 * <p>Some prepare acts are needed only in plans with an act inside the device. So the best plan is
 * the better of the best plan of acts outside and of the best plan at all with those acts.
 */
public final class Planning {

    private final PlanRequest request;
    private final Device device;
    private final Limits limits;
    private final Rebuilds rebuilds;

    /** Cost of the prepare acts that every plan with an act needs, in milliseconds. */
    private final long alwaysMs;

    /** Cost of the prepare acts that plans with an act inside need besides, in milliseconds. */
    private final long insideMs;

    /** The best plan of one kind, if there is any, and what is known of all of its kind. */
    private record Found(List<CostedAct> acts, long totalMs, long lowerBoundMs, Plan.Ended ended) {

        static final Found NOTHING =
                new Found(List.of(), Bound.NEVER, Bound.NEVER, Plan.Ended.PROVED);

        boolean none() {
            return totalMs >= Bound.NEVER;
        }

        /** The better of two, where every plan is of one kind or of the other. */
        Found or(Found other) {
            Found better = other.totalMs < totalMs ? other : this;
            long bound = Math.min(lowerBoundMs, other.lowerBoundMs);
            Plan.Ended why = ended == Plan.Ended.PROVED ? other.ended : ended;
            return new Found(
                    better.acts,
                    better.totalMs,
                    bound,
                    bound == better.totalMs ? Plan.Ended.PROVED : why);
        }
    }

    private Planning(PlanRequest request, Watch watch, Rebuilds rebuilds) {
        this.rebuilds = rebuilds;
        this.request = request;
        this.device = request.device();
        this.limits = new Limits(request.effort(), watch);
        alwaysMs = prepareMs(false);
        insideMs = prepareMs(true);
    }

    /**
     * Plans.
     *
     * @param request a request that is valid for its device
     * @param watch receives progress and may cancel
     * @param rebuilds what the plan carries to make its rebuild
     */
    public static PlanResult plan(PlanRequest request, Watch watch, Rebuilds rebuilds) {
        return new Planning(request, watch, rebuilds).run();
    }

    private PlanResult run() {
        Task task = new Task(request);
        if (task.reached(task.start()) && !prepareRequired()) {
            return new PlanResult.Found(
                    new Plan(request, List.of(), 0, 0, Plan.Ended.PROVED, 0, rebuilds));
        }
        Found outside = insideMs > 0 ? search(new Task(request, true), 0) : Found.NOTHING;
        Found found = outside.or(search(task, insideMs));
        if (found.none()) {
            return found.ended == Plan.Ended.PROVED
                    ? new PlanResult.Impossible(reasons())
                    : new PlanResult.Unfinished(found.ended, found.lowerBoundMs);
        }
        return new PlanResult.Found(
                new Plan(
                        request,
                        found.acts,
                        found.totalMs,
                        found.lowerBoundMs,
                        found.ended,
                        limits.expansions(),
                        rebuilds));
    }

    /**
     * Searches for the best plan that a task allows.
     *
     * @param moreMs cost of the prepare acts that its plans need besides those that all need
     * @return the plan, if there is any, and a bound on all plans of the task that need as much
     */
    private Found search(Task task, long moreMs) {
        Search.Outcome outcome = new Search(task, limits).run();
        Node best = outcome.best();
        long bound = outcome.lowerBoundMs();
        if (best == null) {
            return new Found(
                    List.of(),
                    Bound.NEVER,
                    Math.min(Bound.NEVER, bound + alwaysMs + moreMs),
                    outcome.ended());
        }
        best = new Sparing(task).of(best);
        List<CostedAct> acts = acts(best, task.c);
        boolean inside = isInside(acts);
        long prepareMs = alwaysMs + (inside ? insideMs : 0);
        long total = acts.stream().mapToLong(CostedAct::costMs).sum();
        if (total != best.cost + prepareMs) {
            throw new IllegalStateException(
                    "the plan costs "
                            + total
                            + " ms, the search counted "
                            + (best.cost + prepareMs)
                            + " ms");
        }
        return new Found(acts, total, Math.min(total, bound + prepareMs), outcome.ended());
    }

    private boolean isInside(List<CostedAct> acts) {
        return acts.stream().anyMatch(act -> !device.power().isOutside(act.act()));
    }

    private List<Prepare> prepares(boolean onlyInside) {
        return device.prepares().values().stream()
                .filter(prepare -> !request.start().prepared().contains(prepare.id()))
                .filter(prepare -> isOnlyInside(prepare) == onlyInside)
                .toList();
    }

    private boolean isOnlyInside(Prepare prepare) {
        return prepare.onlyInside()
                && !request.rules().requiredActs().contains(new Act.Prepared(prepare.id()).id());
    }

    private boolean prepareRequired() {
        return request.rules().requiredActs().stream()
                .anyMatch(id -> Act.parse(id) instanceof Act.Prepared);
    }

    private long prepareMs(boolean onlyInside) {
        return prepares(onlyInside).stream()
                .mapToLong(prepare -> prepare.ms() + prepare.restoreMs())
                .sum();
    }

    /** Explains why there is no plan: the obstacle, or that there is no single one. */
    private List<String> reasons() {
        return StepGraph.of(device, request.start(), request.rules())
                .blocked(request.goal())
                .map(Blocked::chain)
                .orElse(
                        List.of(
                                request.goal()
                                        + ": no order of acts works, although no single fact prevents it"));
    }

    private List<CostedAct> acts(Node best, Compiled c) {
        List<CostedAct> work = new ArrayList<>();
        for (Node node : best.path()) {
            work.addAll(costed(node, c));
        }
        boolean inside = isInside(work);
        List<CostedAct> acts = new ArrayList<>();
        for (Prepare prepare : device.prepares().values()) {
            if (prepares(false).contains(prepare) || (inside && prepares(true).contains(prepare))) {
                acts.add(
                        new CostedAct(
                                new Act.Prepared(prepare.id()),
                                device.hand(),
                                device.usualPosture(),
                                prepare.ms(),
                                prepare.restoreMs(),
                                0));
            }
        }
        acts.addAll(work);
        return acts;
    }

    private List<CostedAct> costed(Node node, Compiled c) {
        Node.Step step = Objects.requireNonNull(node.step);
        Position before = Objects.requireNonNull(node.from).at;
        long setup = c.moving.setupMs(before.clazz, node.at.clazz, before.released, before.place);
        List<CostedAct> acts = new ArrayList<>();
        if (step instanceof Node.Step.Release release) {
            String wayId = c.options[release.node()][release.option()].id();
            for (String member : c.members[release.node()]) {
                Joint joint = device.joint(member);
                Way way = Objects.requireNonNull(joint.ways().get(wayId));
                acts.add(
                        new CostedAct(
                                new Act.Release(member, wayId),
                                way.tool(),
                                way.posture(),
                                way.ms(),
                                way.restoreMs(),
                                acts.isEmpty() ? setup : 0));
            }
        } else if (step instanceof Node.Step.Move move) {
            int clazz = c.partClass[move.parts()[0]];
            acts.add(
                    new CostedAct(
                            new Act.MoveParts(
                                    Arrays.stream(move.parts())
                                            .mapToObj(p -> c.partIds[p])
                                            .toList()),
                            c.classTool[clazz],
                            c.classPosture[clazz],
                            c.moving.ms(move.parts(), move.given(), move.aside()),
                            c.moving.restoreMs(move.parts(), move.given()),
                            setup));
        }
        return acts;
    }
}
