package reseat.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import reseat.model.Act;
import reseat.model.Prepare;
import reseat.model.State;

/** Carries out one act after the other over masks: is it allowed, and what does it cost? */
final class Walker {

    private final Case of;
    private final Masks masks;
    private final Asked asked;
    private final List<String> prepares;
    private long state;
    private int prepared;
    private boolean worked;
    private boolean broken;

    Walker(Case of) {
        this.of = of;
        this.masks = new Masks(of.device());
        this.asked = new Asked(masks, of);
        this.prepares = List.copyOf(of.device().prepares().keySet());
        this.state = masks.encode(of.start());
    }

    /**
     * Carries an act out and returns its cost in milliseconds; empty, and nothing is done, if it is
     * not allowed.
     */
    OptionalLong take(Act act) {
        if (act instanceof Act.Prepared prepare) {
            return prepare(prepare);
        }
        if (prepared != (1 << prepares.size()) - 1) {
            return OptionalLong.empty();
        }
        return act instanceof Act.Release release ? release(release) : move((Act.MoveParts) act);
    }

    /** Returns all releases and moves that are allowed now, prepare acts apart. */
    List<Act> allowed() {
        List<Act> acts = new ArrayList<>();
        for (int j = 0; j < masks.joints; j++) {
            if (masks.mayRelease(state, j)) {
                for (Masks.WayFacts way : masks.ways.get(j)) {
                    acts.add(masks.releaseAct(j, way));
                }
            }
        }
        for (int set = 1; set < 1 << masks.parts; set++) {
            if (masks.mayMove(state, set)) {
                acts.add(masks.moveAct(set));
            }
        }
        return acts;
    }

    private OptionalLong prepare(Act.Prepared act) {
        int at = prepares.indexOf(act.prepare());
        if (worked || at < 0 || (prepared >> at & 1) != 0) {
            return OptionalLong.empty();
        }
        prepared |= 1 << at;
        broken |= of.rules().forbiddenActs().contains(act.id());
        Prepare facts = of.device().prepares().get(act.prepare());
        return OptionalLong.of(facts.ms() + facts.restoreMs());
    }

    private OptionalLong release(Act.Release act) {
        int j = masks.jointIds.indexOf(act.joint());
        for (Masks.WayFacts way : masks.ways.get(j)) {
            if (way.way().id().equals(act.way()) && masks.mayRelease(state, j)) {
                broken |= !asked.permits(j, way);
                long ms = masks.setupMs(state, way.tool(), way.posture()) + way.ms();
                state = masks.afterRelease(state, j, way) | asked.fulfilled(act, way.way().tool());
                worked = true;
                return OptionalLong.of(ms);
            }
        }
        return OptionalLong.empty();
    }

    private OptionalLong move(Act.MoveParts act) {
        int set = masks.partMask(act.parts());
        if (Integer.bitCount(set) != act.parts().size() || !masks.mayMove(state, set)) {
            return OptionalLong.empty();
        }
        broken |= !asked.permits(set);
        int tool = masks.moveTool[Integer.numberOfTrailingZeros(set)];
        int posture = masks.movePosture[Integer.numberOfTrailingZeros(set)];
        long ms = masks.setupMs(state, tool, posture) + masks.moveCost(set);
        state =
                masks.afterMove(state, set)
                        | asked.fulfilled(masks.moveAct(set), masks.toolIds.get(tool));
        worked = true;
        return OptionalLong.of(ms);
    }

    State state() {
        return masks.decode(state);
    }

    boolean reached() {
        return asked.reached(state);
    }

    /** Tells whether what was done so far is a valid plan. */
    boolean valid() {
        boolean ready = prepared == (1 << prepares.size()) - 1;
        boolean idle = !worked && prepared == 0;
        return !broken && (ready || idle) && asked.met(state) && !(asked.needsPrepare() && idle);
    }
}
