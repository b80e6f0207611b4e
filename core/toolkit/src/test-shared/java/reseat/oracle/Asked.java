package reseat.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import reseat.model.Act;
import reseat.model.Goal;
import reseat.model.Rules;

/** What a case asks for, over the masks of its device: goal, forbidden and required things. */
final class Asked {

    private final Masks masks;
    private final Goal goal;
    private final Rules rules;
    private final List<String> duties = new ArrayList<>();
    private final boolean prepareRequired;
    private final int mustRelease;
    private final int mustMove;

    Asked(Masks masks, Case asked) {
        this.masks = masks;
        this.goal = asked.goal();
        this.rules = asked.rules();
        boolean prepares = false;
        for (String act : rules.requiredActs()) {
            if (Act.parse(act) instanceof Act.Prepared) {
                prepares = true;
            } else {
                duties.add(act);
            }
        }
        prepareRequired = prepares;
        rules.requiredTools().forEach(tool -> duties.add("tool " + tool));
        mustRelease = Masks.mask(rules.requiredJoints(), masks.jointIds);
        mustMove = masks.partMask(rules.requiredParts());
    }

    /** Returns whether some prepare act is asked for by name, so that doing nothing will not do. */
    boolean needsPrepare() {
        return prepareRequired;
    }

    /** Returns the duties that an act fulfils, as bits in place. */
    long fulfilled(Act act, String tool) {
        if (duties.isEmpty()) {
            return 0;
        }
        long bits = 0;
        for (int i = 0; i < duties.size(); i++) {
            String duty = duties.get(i);
            if (duty.equals(act.id()) || duty.equals("tool " + tool)) {
                bits |= 1L << Masks.DONE + i;
            }
        }
        return bits;
    }

    boolean permits(int joint, Masks.WayFacts way) {
        return !rules.forbiddenJoints().contains(masks.jointIds.get(joint))
                && !rules.forbiddenTools().contains(way.way().tool())
                && !rules.forbiddenActs().contains(masks.releaseAct(joint, way).id())
                && rules.permittedRuin().containsAll(way.way().ruins());
    }

    boolean permits(int set) {
        String tool = masks.toolIds.get(masks.moveTool[Integer.numberOfTrailingZeros(set)]);
        return (masks.partMask(rules.forbiddenParts()) & set) == 0
                && !rules.forbiddenTools().contains(tool)
                && !rules.forbiddenActs().contains(masks.moveAct(set).id());
    }

    boolean forbidsPrepare() {
        return masks.device.prepares().keySet().stream()
                .anyMatch(
                        prepare -> rules.forbiddenActs().contains(new Act.Prepared(prepare).id()));
    }

    /** Tells whether goal and duties are met in a state. */
    boolean met(long state) {
        return Masks.done(state) == (1 << duties.size()) - 1
                && (Masks.released(state) & mustRelease) == mustRelease
                && (masks.placeMask(state, masks.base) & mustMove) == 0
                && reached(state);
    }

    /** Tells whether the goal alone holds in a state. */
    boolean reached(long state) {
        if (goal instanceof Goal.Free free) {
            return free.targets().stream().allMatch(target -> isFree(state, target));
        }
        if (goal instanceof Goal.Reach reach) {
            int joint = masks.jointIds.indexOf(reach.joint());
            return masks.mayRelease(state, joint)
                    && masks.ways.get(joint).stream().anyMatch(way -> permits(joint, way));
        }
        for (int p = 0; p < masks.parts; p++) {
            if (masks.placeMask(state, p) != 1 << p) {
                return false;
            }
        }
        return Masks.released(state) == (1 << masks.joints) - 1;
    }

    private boolean isFree(long state, String target) {
        int t = masks.partIds.indexOf(target);
        int unit = 1 << t | masks.partMask(Set.copyOf(masks.device.part(target).spareIncludes()));
        for (int j = 0; j < masks.joints; j++) {
            boolean unreleased = (Masks.released(state) >> j & 1) == 0;
            if (unreleased && (masks.holds[j] >> t & 1) != 0 && (masks.holds[j] & ~unit) != 0) {
                return false;
            }
        }
        return (masks.placeMask(state, t) & ~unit) == 0;
    }
}
