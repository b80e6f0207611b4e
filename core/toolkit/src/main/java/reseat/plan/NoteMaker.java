package reseat.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Hazard;
import reseat.model.Joint;
import reseat.model.Signal;
import reseat.model.State;
import reseat.model.Way;

/** Collects the advice for each act. */
final class NoteMaker {

    private static final Comparator<Advice> GRAVEST_FIRST =
            Comparator.comparing(Advice::signal).thenComparing(Advice::kind);

    private final Device device;
    private final List<CostedAct> acts;
    private final List<Stand> stands;
    private final Sayings facts;
    private final Set<String> said = new LinkedHashSet<>();

    NoteMaker(Device device, State start, List<CostedAct> acts) {
        this.device = device;
        this.acts = acts;
        List<Stand> all = new ArrayList<>(List.of(Stand.of(device, start)));
        for (CostedAct act : acts) {
            all.add(all.get(all.size() - 1).after(act.act()));
        }
        this.stands = all;
        this.facts = new Sayings(device);
    }

    PlanNotes make(Rebuild rebuild) {
        List<List<String>> uncovers = new Uncovering(device).of(stands);
        List<List<Advice>> down = new ArrayList<>();
        String posture = device.usualPosture();
        for (int i = 0; i < acts.size(); i++) {
            List<Advice> here = new ArrayList<>();
            if (!acts.get(i).posture().equals(posture)) {
                posture = acts.get(i).posture();
                turning(stands.get(i), posture, true, here);
            }
            teardown(i, uncovers.get(i), here);
            down.add(sorted(here));
        }
        List<List<Advice>> up = new ArrayList<>();
        List<Stand> back = Stand.before(rebuild);
        for (int i = 0; i < rebuild.acts().size(); i++) {
            RebuildAct act = rebuild.acts().get(i);
            List<Advice> here = new ArrayList<>();
            if (!act.posture().equals(posture)) {
                posture = act.posture();
                turning(back.get(i), posture, false, here);
            }
            rebuild(act, back.get(i + 1), here);
            up.add(sorted(here));
        }
        return new PlanNotes(down, uncovers, up);
    }

    private static List<Advice> sorted(List<Advice> here) {
        return here.stream().distinct().sorted(GRAVEST_FIRST).toList();
    }

    private void teardown(int at, List<String> uncovers, List<Advice> here) {
        Act act = acts.get(at).act();
        hazards(facts.hazards(act), here);
        uncovers.forEach(part -> hazards(facts.hazards(part), here));
        if (act instanceof Act.Release release) {
            Joint joint = device.joint(release.joint());
            Way way = Objects.requireNonNull(joint.ways().get(release.way()));
            keepHold(at, joint, way, here);
            magnets(stands.get(at), joint, here);
            facts.handling(joint, way).forEach(text -> handling(joint.id(), text, here));
        } else if (act instanceof Act.MoveParts move) {
            tethers(at, move.parts(), here);
            for (String part : move.parts()) {
                facts.handling(part, move.parts().size() == 1)
                        .forEach(text -> handling(part, text, here));
            }
            for (String part : move.parts()) {
                device.part(part)
                        .inspect()
                        .forEach(text -> add(Advice.Kind.INSPECT, part, text, here));
            }
        }
    }

    private void rebuild(RebuildAct act, Stand after, List<Advice> here) {
        if (act.kind() != RebuildAct.Kind.UNDO_PREPARE && act.kind() != RebuildAct.Kind.WAIT) {
            act.act().ifPresent(undone -> hazards(facts.hazards(undone), here));
        }
        if (!act.kind().isUndoing()) {
            return;
        }
        for (String id : act.joints()) {
            Joint joint = device.joint(id);
            magnets(after, joint, here);
            if (act.irreversible()) {
                add(
                        Advice.Kind.NO_WAY_BACK,
                        joint.id(),
                        facts.name(joint)
                                + " cannot be opened again without destroying it: check that"
                                + " nothing is left out and that every test due before"
                                + " it has passed",
                        here);
            }
            wear(joint, here);
        }
    }

    private void hazards(Set<String> ids, List<Advice> here) {
        for (String id : ids) {
            Hazard hazard = device.hazards().get(id);
            if (hazard != null && here.stream().noneMatch(advice -> isHazard(advice, id))) {
                here.add(
                        new Advice(
                                Advice.Kind.HAZARD,
                                hazard.signal(),
                                id,
                                hazard.nature(),
                                !said.add("hazard " + id),
                                OptionalInt.empty()));
            }
        }
    }

    private static boolean isHazard(Advice advice, String id) {
        return advice.kind() == Advice.Kind.HAZARD && advice.subject().equals(id);
    }

    private void turning(Stand stand, String posture, boolean down, List<Advice> here) {
        List<Joint> tethers = stand.tethers();
        if (!tethers.isEmpty()) {
            Set<String> hanging = new LinkedHashSet<>();
            for (Joint joint : tethers) {
                joint.holds().stream()
                        .filter(part -> !stand.withBase(part))
                        .forEach(part -> hanging.addAll(stand.sharing(part)));
            }
            add(
                    Advice.Kind.HANGING,
                    tethers.get(0).id(),
                    facts.names(hanging)
                            + " still "
                            + (hanging.size() == 1 ? "hangs" : "hang")
                            + " by "
                            + facts.joints(tethers)
                            + ": support "
                            + (hanging.size() == 1 ? "it" : "them")
                            + " while you turn the device ("
                            + facts.posture(posture)
                            + ")",
                    here);
        }
        List<Joint> screws = down ? stand.looseScrews() : List.of();
        if (!screws.isEmpty()) {
            add(
                    Advice.Kind.LOOSE_SCREWS,
                    screws.get(0).id(),
                    (screws.size() == 1
                                    ? "A released screw may still stand in its hole ("
                                    : screws.size()
                                            + " released screws may still stand in their holes (")
                            + facts.joints(screws)
                            + "): take "
                            + (screws.size() == 1 ? "it" : "them")
                            + " out before you turn the device ("
                            + facts.posture(posture)
                            + ")",
                    here);
        }
        List<String> loose = stand.looseParts();
        if (!loose.isEmpty()) {
            add(
                    Advice.Kind.LOOSE_PARTS,
                    loose.get(0),
                    facts.names(loose)
                            + (loose.size() == 1 ? " lies" : " lie")
                            + " loose in the device: hold "
                            + (loose.size() == 1 ? "it" : "them")
                            + " in place while you turn it ("
                            + facts.posture(posture)
                            + ")",
                    here);
        }
    }

    private void tethers(int at, List<String> parts, List<Advice> here) {
        List<Joint> left =
                stands.get(at + 1).tethers().stream()
                        .filter(joint -> joint.holds().stream().anyMatch(parts::contains))
                        .toList();
        if (!left.isEmpty()) {
            add(
                    Advice.Kind.TETHER,
                    parts.get(0),
                    "Still connected by "
                            + facts.joints(left)
                            + ": lay it so that no cable carries its weight",
                    here);
        }
    }

    private void keepHold(int at, Joint joint, Way way, List<Advice> here) {
        if (!device.kindOf(joint).keepHold() && !device.manipulation(way.kind()).keepHold()) {
            return;
        }
        for (int next = at + 1; next < acts.size(); next++) {
            if (acts.get(next).act() instanceof Act.MoveParts move) {
                Optional<String> moved =
                        move.parts().stream().filter(joint.holds()::contains).findFirst();
                if (moved.isPresent()) {
                    here.add(
                            new Advice(
                                    Advice.Kind.KEEP_HOLD,
                                    Signal.NOTICE,
                                    joint.id(),
                                    "Keep holding "
                                            + facts.name(joint)
                                            + " until "
                                            + device.part(moved.get()).name()
                                            + " is moved",
                                    false,
                                    OptionalInt.of(next)));
                    return;
                }
            }
        }
    }

    private void magnets(Stand stand, Joint joint, List<Advice> here) {
        if (!Stand.isScrew(device, joint) || device.kindOf(joint).captive()) {
            return;
        }
        List<String> near =
                device.parts().keySet().stream()
                        .filter(part -> device.kindOf(device.part(part)).magnetic())
                        .filter(part -> stand.together(part, joint.site()))
                        .toList();
        if (!near.isEmpty()) {
            add(
                    Advice.Kind.MAGNET,
                    String.join("+", near),
                    "Magnet in place ("
                            + facts.names(near)
                            + "): guide each screw with the fingers until it is in its tray or"
                            + " thread",
                    here);
        }
    }

    private void wear(Joint joint, List<Advice> here) {
        Optional<Integer> rated = device.kindOf(joint).ratedCycles().stream().boxed().findFirst();
        int made = joint.madeCycles() + 1;
        if (rated.isPresent() && made > rated.get()) {
            add(
                    Advice.Kind.WEAR,
                    joint.id(),
                    facts.name(joint)
                            + " will have been made "
                            + made
                            + " times; its kind is rated for "
                            + rated.get()
                            + ": inspect it closely or replace it",
                    here);
        }
    }

    private void handling(String subject, String text, List<Advice> here) {
        add(Advice.Kind.HANDLING, subject, text, here);
    }

    private void add(Advice.Kind kind, String subject, String text, List<Advice> here) {
        boolean known = !said.add(kind + " " + text);
        if (here.stream().noneMatch(a -> a.kind() == kind && a.text().equals(text))) {
            here.add(new Advice(kind, Signal.NOTICE, subject, text, known, OptionalInt.empty()));
        }
    }
}
