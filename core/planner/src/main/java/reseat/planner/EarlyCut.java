package reseat.planner;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.NavigableSet;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.Watch;
import reseat.simulate.Simulator;
import reseat.simulate.Verdict;

/**
 * Among plans of the same acts that cost the same, prefers the one that cuts the power early. For
 * one supply after the other, acts that its isolator does not wait for are put off until it is cut.
 * What the simulator finds invalid or dearer is left as it was, so the plan only gets better.
 */
final class EarlyCut {

    /** Most orders that are given to the simulator for one plan. */
    private static final int MOST_JUDGED = 400;

    private final PlanRequest request;
    private final Device device;
    private final Watch watch;
    private final int prepared;
    private List<CostedAct> best;
    private long bestMs;
    private int judged;

    private EarlyCut(Plan plan, Watch watch) {
        request = plan.request();
        device = request.device();
        this.watch = watch;
        best = plan.acts();
        bestMs = plan.totalMs();
        prepared = (int) best.stream().takeWhile(act -> act.act() instanceof Act.Prepared).count();
    }

    /**
     * Returns a plan of the same acts that costs no more, with the power cut as early as it gets.
     */
    static Plan of(Plan plan, Watch watch) {
        EarlyCut early = new EarlyCut(plan, watch);
        early.run();
        if (early.best.equals(plan.acts())) {
            return plan;
        }
        return new Plan(
                plan.request(),
                early.best,
                early.bestMs,
                plan.lowerBoundMs(),
                early.bestMs == plan.lowerBoundMs() ? Plan.Ended.PROVED : plan.ended(),
                plan.expansions(),
                Planner::rebuild);
    }

    private void run() {
        int from = prepared;
        for (String supply : supplies()) {
            OptionalInt cut = dependencies().cutAt(supply);
            if (cut.isPresent() && cut.getAsInt() >= from) {
                from = cutEarly(from, cut.getAsInt()) + 1;
            }
        }
    }

    /**
     * Returns the supplies that are not cut at the start, those that are cut first before others.
     */
    private Collection<String> supplies() {
        Set<String> supplies = new LinkedHashSet<>(device.power().first());
        supplies.addAll(device.power().cuttable());
        request.start().released().forEach(id -> supplies.removeAll(device.joint(id).cuts()));
        return supplies;
    }

    /**
     * Puts off what an act does not wait for, as much as possible.
     *
     * @param from index of the first act that may be put off
     * @param cut index of the act
     * @return the new index of the act
     */
    private int cutEarly(int from, int cut) {
        NavigableSet<Integer> other = new TreeSet<>();
        Set<Integer> waited = waitedFor(cut);
        for (int k = from; k < cut; k++) {
            if (!waited.contains(k)) {
                other.add(k);
            }
        }
        for (int first : other) {
            NavigableSet<Integer> late = other.tailSet(first, true);
            if (putOff(late, cut)) {
                return runs(other.headSet(first, false), cut - late.size());
            }
        }
        return runs(other, cut);
    }

    /** Puts off runs of acts by one tool in one posture, the last first. */
    private int runs(NavigableSet<Integer> other, int cut) {
        int at = cut;
        NavigableSet<Integer> open = new TreeSet<>(other);
        while (!open.isEmpty()) {
            NavigableSet<Integer> run = new TreeSet<>();
            int k = open.last();
            do {
                run.add(k);
                open.remove(k);
                k--;
            } while (open.contains(k) && isAlike(best.get(k), best.get(k + 1)));
            if (putOff(run, at)) {
                at -= run.size();
            }
        }
        return at;
    }

    private static boolean isAlike(CostedAct a, CostedAct b) {
        return a.tool().equals(b.tool()) && a.posture().equals(b.posture());
    }

    /** Returns the acts without which an act would not be possible, by index. */
    private Set<Integer> waitedFor(int act) {
        Dependencies dependencies = dependencies();
        Set<Integer> waited = new TreeSet<>();
        Deque<Integer> open = new ArrayDeque<>(List.of(act));
        while (!open.isEmpty()) {
            for (Dependencies.Link link : dependencies.before(open.remove())) {
                if (waited.add(link.from())) {
                    open.add(link.from());
                }
            }
        }
        return waited;
    }

    private Dependencies dependencies() {
        return new Dependencies(request, acts());
    }

    private List<Act> acts() {
        return best.stream().map(CostedAct::act).toList();
    }

    /** Puts acts off until after another, if that is possible and no dearer. */
    private boolean putOff(NavigableSet<Integer> late, int after) {
        if (judged >= MOST_JUDGED || watch.cancelled()) {
            return false;
        }
        judged++;
        List<Act> acts = acts();
        List<Act> order = new ArrayList<>(acts.subList(0, late.first()));
        for (int k = late.first(); k <= after; k++) {
            if (!late.contains(k)) {
                order.add(acts.get(k));
            }
        }
        late.forEach(k -> order.add(acts.get(k)));
        order.addAll(acts.subList(after + 1, acts.size()));
        Verdict verdict =
                Simulator.judge(device, request.start(), request.goal(), request.rules(), order);
        if (!verdict.valid() || verdict.totalMs() > bestMs) {
            return false;
        }
        best = verdict.acts();
        bestMs = verdict.totalMs();
        return true;
    }
}
