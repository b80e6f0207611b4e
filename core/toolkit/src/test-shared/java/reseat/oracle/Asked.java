package reseat.oracle;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import reseat.model.Act;
import reseat.model.Goal;
import reseat.model.Prepare;
import reseat.model.Rules;

/** What a case asks for, over the masks of its device: goal, forbidden and required things. */
final class Asked {

    private final Masks masks;
    private final Goal goal;
    private final Rules rules;
    private final List<String> duties = new ArrayList<>();
    private final Set<String> mustPrepare = new LinkedHashSet<>();
    private final List<Prepare> prepares = new ArrayList<>();
    private final boolean insideCounts;
    private final int mustRelease;
    private final int mustMove;

    Asked(Masks masks, Case asked) {
        this(masks, asked, Set.of());
    }

    /** Reads what is asked for as if some features did not exist. */
    Asked(Masks masks, Case asked, Set<Feature> off) {
        this.masks = masks;
        this.goal = asked.goal();
        this.rules = asked.rules();
        for (String act : rules.requiredActs()) {
            if (Act.parse(act) instanceof Act.Prepared prepare) {
                mustPrepare.add(prepare.prepare());
            } else {
                duties.add(act);
            }
        }
        insideCounts = !off.contains(Feature.INSIDE_PREPARES);
        for (Prepare prepare : masks.device.prepares().values()) {
            if (!asked.start().prepared().contains(prepare.id())) {
                prepares.add(prepare);
            }
        }
        rules.requiredTools().forEach(tool -> duties.add("tool " + tool));
        mustRelease = Masks.mask(rules.requiredJoints(), masks.jointIds);
        mustMove = masks.partMask(rules.requiredParts());
    }

    /** Returns the prepare acts that are not done at the start. */
    List<Prepare> open() {
        return prepares;
    }

    /** Returns the prepare acts that are asked for by name, so that doing nothing will not do. */
    Set<String> mustPrepare() {
        return mustPrepare;
    }

    /**
     * Returns the prepare acts of a plan that does something.
     *
     * @param inside whether it does something inside
     */
    List<Prepare> prepares(boolean inside) {
        return prepares.stream()
                .filter(
                        prepare ->
                                inside
                                        || !insideCounts
                                        || !prepare.onlyInside()
                                        || mustPrepare.contains(prepare.id()))
                .toList();
    }

    boolean permits(Prepare prepare) {
        return !rules.forbiddenActs().contains(new Act.Prepared(prepare.id()).id());
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

    /** Tells whether a set of parts may be moved, as far as that depends on the state. */
    boolean permits(long state, int set) {
        return (Masks.mask(rules.forbiddenJoints(), masks.jointIds) & masks.letGo(state, set)) == 0;
    }

    /** Tells whether a set of parts may be moved, whatever the state. */
    boolean permits(int set) {
        String tool = masks.toolIds.get(masks.moveTool[Integer.numberOfTrailingZeros(set)]);
        return (masks.partMask(rules.forbiddenParts()) & set) == 0
                && !rules.forbiddenTools().contains(tool)
                && !rules.forbiddenActs().contains(masks.moveAct(set).id());
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
            return masks.ways.get(joint).stream()
                    .anyMatch(way -> permits(joint, way) && masks.mayRelease(state, joint, way));
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
