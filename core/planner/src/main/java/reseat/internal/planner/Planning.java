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

/** From a request to a result: numbers in, acts out. */
public final class Planning {

    private final PlanRequest request;
    private final Device device;
    private final Task task;
    private final Limits limits;
    private final Rebuilds rebuilds;

    private Planning(PlanRequest request, Watch watch, Rebuilds rebuilds) {
        this.rebuilds = rebuilds;
        this.request = request;
        this.device = request.device();
        this.task = new Task(request);
        this.limits = new Limits(request.effort(), watch);
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
        if (task.reached(task.start())) {
            return new PlanResult.Found(new Plan(request, List.of(), 0, 0, Plan.Ended.PROVED, 0, rebuilds));
        }
        Search search = new Search(task, limits);
        Search.Outcome outcome = search.run();
        Node best = outcome.best();
        if (best == null) {
            return outcome.ended() == Plan.Ended.PROVED
                    ? new PlanResult.Impossible(reasons())
                    : new PlanResult.Unfinished(
                            outcome.ended(), outcome.lowerBoundMs() + task.prepareMs);
        }
        List<CostedAct> acts = acts(best.steps());
        long total = acts.stream().mapToLong(CostedAct::costMs).sum();
        if (total != best.cost + task.prepareMs) {
            throw new IllegalStateException(
                    "the plan costs "
                            + total
                            + " ms, the search counted "
                            + (best.cost + task.prepareMs)
                            + " ms");
        }
        return new PlanResult.Found(
                new Plan(
                        request,
                        acts,
                        total,
                        outcome.lowerBoundMs() + task.prepareMs,
                        outcome.ended(),
                        limits.expansions(),
                        rebuilds));
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

    private List<CostedAct> acts(List<Node.Step> steps) {
        List<CostedAct> acts = new ArrayList<>();
        String tool = device.hand();
        String posture = device.usualPosture();
        for (Prepare prepare : device.prepares().values()) {
            acts.add(
                    new CostedAct(
                            new Act.Prepared(prepare.id()),
                            tool,
                            posture,
                            prepare.ms(),
                            prepare.restoreMs(),
                            0));
        }
        for (Node.Step step : steps) {
            for (CostedAct act : costed(step)) {
                long setup = device.setup().setupMs(tool, posture, act.tool(), act.posture());
                tool = act.tool();
                posture = act.posture();
                acts.add(new CostedAct(act.act(), tool, posture, act.ms(), act.restoreMs(), setup));
            }
        }
        return acts;
    }

    private List<CostedAct> costed(Node.Step step) {
        Compiled c = task.c;
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
                                0));
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
                            Arrays.stream(move.parts()).mapToLong(p -> c.partMs[p]).max().orElse(0),
                            Arrays.stream(move.parts())
                                    .mapToLong(p -> c.partRestoreMs[p])
                                    .max()
                                    .orElse(0),
                            0));
        }
        return acts;
    }
}
