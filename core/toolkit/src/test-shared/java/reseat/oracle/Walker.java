package reseat.oracle;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import reseat.model.Act;
import reseat.model.Prepare;
import reseat.model.State;

/** Carries out one act after the other over masks: is it allowed, and what does it cost? */
final class Walker {

    private final Case of;
    private final Masks masks;
    private final Asked asked;
    private final Set<String> prepared = new HashSet<>();
    private long state;
    private boolean worked;
    private boolean broken;

    Walker(Case of) {
        this.of = of;
        this.masks = new Masks(of.device());
        this.asked = new Asked(masks, of);
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
        if (!ready(!isOutside(act))) {
            return OptionalLong.empty();
        }
        return act instanceof Act.Release release ? release(release) : move((Act.MoveParts) act);
    }

    private boolean isOutside(Act act) {
        if (act instanceof Act.Release release) {
            return (masks.power.outsideJoints >> masks.jointIds.indexOf(release.joint()) & 1) != 0;
        }
        return (masks.partMask(((Act.MoveParts) act).parts()) & ~masks.power.outsideParts) == 0;
    }

    private boolean ready(boolean inside) {
        return asked.open().stream()
                .filter(prepare -> inside || !prepare.onlyInside())
                .allMatch(prepare -> prepared.contains(prepare.id()));
    }

    /** Returns all releases and moves that are allowed now, prepare acts apart. */
    List<Act> allowed() {
        List<Act> acts = new ArrayList<>();
        for (int j = 0; j < masks.joints; j++) {
            for (Masks.WayFacts way : masks.ways.get(j)) {
                if (masks.mayRelease(state, j, way)) {
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
        Prepare facts = of.device().prepares().get(act.prepare());
        if (worked || !asked.open().contains(facts) || !prepared.add(act.prepare())) {
            return OptionalLong.empty();
        }
        broken |= !asked.permits(facts);
        return OptionalLong.of(facts.ms() + facts.restoreMs());
    }

    private OptionalLong release(Act.Release act) {
        int j = masks.jointIds.indexOf(act.joint());
        for (Masks.WayFacts way : masks.ways.get(j)) {
            if (way.way().id().equals(act.way()) && masks.mayRelease(state, j, way)) {
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
        broken |= !asked.permits(set) || !asked.permits(state, set);
        int tool = masks.moveTool[Integer.numberOfTrailingZeros(set)];
        int posture = masks.movePosture[Integer.numberOfTrailingZeros(set)];
        long ms = masks.setupMs(state, tool, posture) + masks.moveMs(state, set);
        state =
                masks.afterMove(state, set)
                        | asked.fulfilled(masks.moveAct(set), masks.toolIds.get(tool));
        worked = true;
        return OptionalLong.of(ms);
    }

    State state() {
        State places = masks.decode(state);
        Set<String> all = new LinkedHashSet<>();
        for (String prepare : of.device().prepares().keySet()) {
            if (prepared.contains(prepare) || of.start().prepared().contains(prepare)) {
                all.add(prepare);
            }
        }
        return new State(places.released(), places.places(), all);
    }

    /** Tells whether something was done that must not be. */
    boolean broken() {
        return broken;
    }

    boolean reached() {
        return asked.reached(state);
    }

    /** Tells whether what was done so far is a valid plan. */
    boolean valid() {
        boolean idle = !worked && prepared.isEmpty();
        return !broken
                && (idle || ready(false))
                && asked.met(state)
                && prepared.containsAll(asked.mustPrepare());
    }
}
