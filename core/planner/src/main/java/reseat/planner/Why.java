package reseat.planner;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import reseat.graph.Needed;
import reseat.graph.StepGraph;
import reseat.graph.Work;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Rules;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.plan.Plans;
import reseat.plan.Watch;

/**
 * Explains why something must come off, for the acts of one plan: which later acts would be
 * impossible without it, down to the goal. May be shared between threads.
 */
public final class Why {

    private final Plan plan;
    private final Plans plans;
    private final Device device;
    private final List<Act> acts;
    private final Dependencies dependencies;
    private final Needed needed;

    private Why(Plan plan, Plans plans) {
        this.plan = plan;
        this.plans = plans;
        PlanRequest request = plan.request();
        device = request.device();
        acts = plan.acts().stream().map(CostedAct::act).toList();
        dependencies = new Dependencies(request, acts);
        needed = StepGraph.of(device, request.start(), request.rules()).neededFor(request.goal());
    }

    /**
     * Analyses a plan; takes milliseconds.
     *
     * @param plan the plan to explain
     * @param plans used to look for a plan that does without
     */
    public static Why of(Plan plan, Plans plans) {
        return new Why(plan, plans);
    }

    /**
     * Explains. If the facts alone do not show that every way needs it, this takes as long as
     * another plan with the effort of the request.
     *
     * <p>The necessity of a release is that of its way, that of a move of several parts states
     * whether all of them could stay where they are.
     *
     * @param actOrPartOrJointId id of an act of the plan, or of a part or a joint of the device; if
     *     a joint and a part share an id, the joint is meant
     * @throws IllegalArgumentException if nothing has that id
     */
    public Explanation explain(String actOrPartOrJointId) {
        return explain(actOrPartOrJointId, Watch.NONE);
    }

    /**
     * Explains as {@link #explain(String)} does.
     *
     * @param actOrPartOrJointId id of an act of the plan, or of a part or a joint of the device
     * @param watch receives the progress of the search for a way without it and may cancel it
     * @throws IllegalArgumentException if nothing has that id
     */
    public Explanation explain(String actOrPartOrJointId, Watch watch) {
        String id = actOrPartOrJointId;
        boolean joint = device.joints().containsKey(id);
        boolean part = !joint && device.parts().containsKey(id);
        List<Integer> where =
                IntStream.range(0, acts.size())
                        .filter(i -> is(acts.get(i), id, joint, part))
                        .boxed()
                        .toList();
        if (where.isEmpty() && joint) {
            where = lettingGo(device.joint(id));
        }
        if (where.isEmpty() && !joint && !part) {
            throw new IllegalArgumentException(
                    id + " is neither an act of the plan nor a part or joint of " + device.id());
        }
        if (where.isEmpty()) {
            String why =
                    plan.request().start().released().contains(id)
                            ? id + " is released from the start"
                            : id + (joint ? " stays connected" : " is not moved") + " in this plan";
            return new Explanation(id, List.of(why), new Necessity.Absent());
        }
        List<String> best = List.of();
        for (int index : where) {
            List<String> links = links(index, part ? Optional.of(id) : Optional.empty());
            if (!links.isEmpty() && (best.isEmpty() || links.size() < best.size())) {
                best = links;
            }
        }
        if (best.isEmpty()) {
            best = List.of("nothing later in this plan depends on " + id);
        }
        return new Explanation(id, best, necessity(id, joint, part, watch));
    }

    /** The move by which a joint lets go; none if no move makes it. */
    private List<Integer> lettingGo(Joint joint) {
        if (plan.request().start().released().contains(joint.id())) {
            return List.of();
        }
        return IntStream.range(0, acts.size())
                .filter(
                        i ->
                                acts.get(i) instanceof Act.MoveParts move
                                        && joint.letsGo(move.parts()))
                .limit(1)
                .boxed()
                .toList();
    }

    private static boolean is(Act act, String id, boolean joint, boolean part) {
        if (joint) {
            return act instanceof Act.Release release && release.joint().equals(id);
        }
        if (part) {
            return act instanceof Act.MoveParts move && move.parts().contains(id);
        }
        return act.id().equals(id);
    }

    /** The shortest chain from an act to the goal; empty if there is none. */
    private List<String> links(int index, Optional<String> part) {
        if (acts.get(index) instanceof Act.Prepared) {
            return List.of(acts.get(index).id() + " comes before any work, for safety");
        }
        Optional<List<String>> own = chain(index, part);
        if (own.isPresent() || part.isEmpty()) {
            return own.orElse(List.of());
        }
        return chain(index, Optional.empty())
                .map(
                        rest -> {
                            List<String> links = new ArrayList<>();
                            links.add(dependencies.goesAlong(index, part.get()));
                            links.addAll(rest);
                            return links;
                        })
                .orElse(List.of());
    }

    /**
     * The shortest chain from an act to the goal, which begins with what one part makes possible.
     */
    private Optional<List<String>> chain(int index, Optional<String> part) {
        int goal = acts.size();
        Dependencies.Link[] from = new Dependencies.Link[goal + 1];
        boolean[] seen = new boolean[goal + 1];
        seen[index] = true;
        Deque<Integer> open = new ArrayDeque<>(List.of(index));
        while (!open.isEmpty() && !seen[goal]) {
            int at = open.removeFirst();
            for (Dependencies.Link link : dependencies.after(at)) {
                boolean apt = at != index || part.isEmpty() || link.subject().equals(part.get());
                if (apt && !seen[link.to()]) {
                    seen[link.to()] = true;
                    from[link.to()] = link;
                    open.addLast(link.to());
                }
            }
        }
        if (!seen[goal]) {
            return Optional.empty();
        }
        List<String> links = new ArrayList<>();
        for (int at = goal; at != index; ) {
            Dependencies.Link link = from[at];
            links.add(0, link.sentence());
            at = link.from();
        }
        return Optional.of(links);
    }

    private Act act(String id) {
        return acts.stream().filter(act -> act.id().equals(id)).findFirst().orElseThrow();
    }

    private static boolean names(Work work, String joint, List<String> parts) {
        return work instanceof Work.Release release
                ? release.joints().contains(joint)
                : parts.contains(((Work.MoveOf) work).part());
    }

    private Necessity necessity(String id, boolean joint, boolean part, Watch watch) {
        Rules rules = plan.request().rules();
        Rules without;
        List<String> parts;
        if (joint) {
            parts = List.of();
            without = rules.forbidJoints(List.of(id));
        } else if (part) {
            parts = List.of(id);
            without = rules.forbidParts(parts);
        } else if (act(id) instanceof Act.MoveParts move) {
            parts = move.parts();
            without = rules.forbidParts(parts);
        } else if (act(id) instanceof Act.Prepared) {
            return new Necessity.EveryWay();
        } else {
            parts = List.of();
            without = rules.forbidActs(List.of(id));
        }
        if (needed.works().stream().anyMatch(work -> names(work, joint ? id : "", parts))) {
            return new Necessity.EveryWay();
        }
        PlanResult result = plans.plan(plan.request().with(without), watch);
        if (result instanceof PlanResult.Impossible) {
            return new Necessity.EveryWay();
        }
        if (result instanceof PlanResult.Found found) {
            Plan other = found.plan();
            return new Necessity.Avoidable(
                    other.totalMs() - plan.totalMs(), plan.proved() && other.proved(), other);
        }
        return new Necessity.Unknown();
    }
}
