package reseat.simulate;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.Set;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Prepare;
import reseat.model.Rules;
import reseat.model.Way;
import reseat.simulate.Breach.Kind;

/** Checks acts against the rules of a user. */
final class RuleCheck {

    private final Device device;
    private final Rules rules;
    private final Words words;
    private final List<Breach> breaches = new ArrayList<>();

    RuleCheck(Device device, Rules rules) {
        this.device = device;
        this.rules = rules;
        this.words = new Words(device);
    }

    /** Returns whether the rules allow a joint to be released by a way. */
    boolean permits(Joint joint, Way way) {
        return !rules.forbiddenJoints().contains(joint.id())
                && !rules.forbiddenActs().contains(new Act.Release(joint.id(), way.id()).id())
                && !rules.forbiddenTools().contains(way.tool())
                && rules.permittedRuin().containsAll(way.ruins());
    }

    /** Returns all breaches of what was done; the bench holds the final state. */
    List<Breach> check(List<Step> steps, Bench end) {
        for (int at = 0; at < steps.size(); at++) {
            forbidden(at, steps.get(at));
        }
        List<CostedAct> acts = steps.stream().map(Step::costed).toList();
        if (!acts.isEmpty()) {
            prepares(end);
        }
        required(acts, end);
        return breaches;
    }

    private void forbidden(int at, Step step) {
        CostedAct costed = step.costed();
        Act act = costed.act();
        String doing = words.doing(act);
        if (rules.forbiddenActs().contains(act.id())) {
            add(Kind.FORBIDDEN_ACT, act.id(), at, doing + " is forbidden");
        }
        if (act instanceof Act.Prepared) {
            return;
        }
        if (rules.forbiddenTools().contains(costed.tool())) {
            add(
                    Kind.FORBIDDEN_TOOL,
                    costed.tool(),
                    at,
                    doing + " takes " + words.tool(costed.tool()) + ", which must not be used");
        }
        if (act instanceof Act.MoveParts move) {
            for (String part : move.parts()) {
                if (rules.forbiddenParts().contains(part)) {
                    add(Kind.FORBIDDEN_PART, part, at, words.part(part) + " must not be moved");
                }
            }
            for (String joint : step.gave()) {
                if (rules.forbiddenJoints().contains(joint)) {
                    add(
                            Kind.FORBIDDEN_JOINT,
                            joint,
                            at,
                            words.joint(device.joint(joint))
                                    + " lets go when "
                                    + words.parts(move.parts())
                                    + (move.parts().size() == 1 ? " is" : " are")
                                    + " moved, and must not be released");
                }
            }
        } else if (act instanceof Act.Release release) {
            Joint joint = device.joint(release.joint());
            if (rules.forbiddenJoints().contains(joint.id())) {
                add(
                        Kind.FORBIDDEN_JOINT,
                        joint.id(),
                        at,
                        words.joint(joint) + " must not be released");
            }
            for (String part : Objects.requireNonNull(joint.ways().get(release.way())).ruins()) {
                if (!rules.permittedRuin().contains(part)) {
                    add(
                            Kind.RUIN,
                            part,
                            at,
                            doing + " ruins " + words.part(part) + ", which is not permitted");
                }
            }
        }
    }

    /**
     * Names what is missing. What only acts inside the device need is never missing here: such an
     * act is refused without it.
     */
    private void prepares(Bench end) {
        for (Prepare prepare : device.prepares().values()) {
            if (!end.isPrepared(prepare.id()) && !prepare.onlyInside()) {
                lacks(
                        Kind.PREPARE_MISSING,
                        prepare.id(),
                        "\"" + words.prepare(prepare.id()) + "\" is missing");
            }
        }
    }

    private void required(List<CostedAct> acts, Bench end) {
        Set<String> done = ids(acts);
        for (String act : rules.requiredActs()) {
            if (!done.contains(act)) {
                lacks(Kind.REQUIRED_ACT, act, "the act \"" + act + "\" is required but missing");
            }
        }
        for (String joint : rules.requiredJoints()) {
            if (!end.isReleased(device.joint(joint).id())) {
                lacks(
                        Kind.REQUIRED_JOINT,
                        joint,
                        words.joint(device.joint(joint)) + " must be released and is not");
            }
        }
        for (String part : rules.requiredParts()) {
            if (end.withBase(device.part(part).id())) {
                lacks(Kind.REQUIRED_PART, part, words.part(part) + " must be moved and is not");
            }
        }
        for (String tool : rules.requiredTools()) {
            boolean used =
                    acts.stream()
                            .anyMatch(
                                    a ->
                                            !(a.act() instanceof Act.Prepared)
                                                    && a.tool().equals(tool));
            if (!used) {
                lacks(Kind.REQUIRED_TOOL, tool, words.tool(tool) + " must be used and is not");
            }
        }
    }

    private static Set<String> ids(List<CostedAct> acts) {
        Set<String> ids = new LinkedHashSet<>();
        acts.forEach(costed -> ids.add(costed.act().id()));
        return ids;
    }

    private void add(Kind kind, String id, int at, String text) {
        breaches.add(new Breach(kind, id, OptionalInt.of(at), Words.sentence(text)));
    }

    private void lacks(Kind kind, String id, String text) {
        breaches.add(new Breach(kind, id, OptionalInt.empty(), Words.sentence(text)));
    }
}
