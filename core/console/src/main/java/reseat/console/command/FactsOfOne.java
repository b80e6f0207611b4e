package reseat.console.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import reseat.console.sheet.Terminal;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Move;
import reseat.model.Part;
import reseat.model.Power;
import reseat.model.Way;
import reseat.query.NeedText;
import reseat.text.ListText;
import reseat.text.TimeText;

/** Prints all facts about one part, joint or supply, with where each was read. */
final class FactsOfOne {

    private final Device device;
    private final PrintWriter out;
    private final PowerFacts power;

    FactsOfOne(Device device, PrintWriter out) {
        this.device = device;
        this.out = out;
        this.power = new PowerFacts(device);
    }

    /** Prints the facts about everything with an id, or fails the command if there is nothing. */
    void print(String id) {
        boolean found = false;
        if (device.supplies().containsKey(id)) {
            found = true;
            line("supply " + id + at("/supplies/" + id));
            power.supply(id).forEach(text -> line("  " + text));
        }
        if (device.parts().containsKey(id)) {
            found = true;
            part(device.part(id));
        }
        List<String> joints =
                device.joints().keySet().stream()
                        .filter(joint -> joint.equals(id) || joint.startsWith(id + "."))
                        .toList();
        if (!joints.isEmpty()) {
            found = true;
            if (joints.size() > 1) {
                line(joints.size() + " joints, of which the first:");
            }
            joint(device.joint(joints.get(0)));
        }
        if (!found) {
            List<String> known = new ArrayList<>(device.parts().keySet());
            known.addAll(device.joints().keySet());
            known.addAll(device.supplies().keySet());
            throw DeviceArgs.unknown("part, joint or supply", id, known);
        }
    }

    private void part(Part part) {
        String pointer = "/parts/" + part.id();
        line("part " + part.id() + ": " + part.name() + ", " + part.kind() + at(pointer));
        if (part.move().isPresent()) {
            Move move = part.move().get();
            line(
                    "  moved: "
                            + act(
                                    move.kind(),
                                    move.tool(),
                                    move.posture(),
                                    move.ms(),
                                    move.restoreMs())
                            + at(pointer + "/move"));
        } else {
            line("  the base: it is never moved");
        }
        if (!part.under().isEmpty()) {
            line("  under: " + String.join(" ", part.under()) + at(pointer + "/under"));
        }
        List<String> holding =
                device.joints().values().stream()
                        .filter(joint -> joint.holds().contains(part.id()))
                        .map(Joint::id)
                        .toList();
        line("  held by: " + PowerFacts.ids(holding));
        line("  in the way of: " + PowerFacts.ids(inTheWay(part.id())));
        for (String supply : device.supplies().keySet()) {
            if (device.supplies().get(supply).of().filter(part.id()::equals).isPresent()) {
                line("  " + supply + " comes from it" + at("/supplies/" + supply + "/of"));
            }
            if (device.power().partsOnTheWay(supply).contains(part.id())) {
                line("  on the way to " + isolators(supply));
            }
        }
        if (part.move().isPresent()) {
            List<Power.Need> needs = device.power().why(List.of(part.id()));
            needs(needs, power.needs(part), power.whyNothing(part));
            for (Power.Need need : needs) {
                because(need, power.whyInside(part), NeedText.from(device, part, need));
            }
        }
    }

    private List<String> inTheWay(String part) {
        List<String> all = new ArrayList<>();
        device.parts().values().stream()
                .filter(other -> other.under().contains(part))
                .forEach(other -> all.add(other.id()));
        device.joints().values().stream()
                .filter(joint -> joint.under().contains(part))
                .forEach(joint -> all.add(joint.id()));
        return all;
    }

    private void joint(Joint joint) {
        String pointer = "/joints/" + joint.id();
        line("joint " + joint.id() + ": " + joint.name() + ", " + joint.kind() + at(pointer));
        line(
                "  holds: "
                        + String.join(" + ", joint.holds())
                        + (joint.slack() ? ", slack" : "")
                        + (joint.gives() ? ", gives" : "")
                        + (device.onlyLetsGo(joint)
                                ? ", released only when "
                                        + ListText.or(device.movedToLetGo(joint))
                                        + " is moved away"
                                : "")
                        + at(pointer + "/holds"));
        if (!joint.under().isEmpty()) {
            line("  under: " + String.join(" ", joint.under()) + at(pointer + "/under"));
        }
        if (joint.isIsolator()) {
            line("  cuts: " + String.join(" ", joint.cuts()) + at(pointer + "/cuts"));
        }
        joint.ways().values().forEach(way -> way(joint, way));
        for (String supply : device.supplies().keySet()) {
            boolean isolator = joint.cuts().contains(supply);
            if (!isolator && device.power().jointsOnTheWay(supply).contains(joint.id())) {
                line("  on the way to " + isolators(supply));
            }
        }
        List<Power.Need> needs = device.power().why(joint);
        needs(needs, power.needs(joint), power.whyNothing(joint));
        for (Power.Need need : needs) {
            because(need, power.whyInside(joint), NeedText.from(device, joint, need));
        }
    }

    private void way(Joint joint, Way way) {
        String pointer = "/joints/" + joint.id() + "/ways/" + way.id();
        line(
                "  way "
                        + way.id()
                        + ": "
                        + act(way.kind(), way.tool(), way.posture(), way.ms(), way.restoreMs())
                        + at(pointer));
        List<String> strains = device.strainedBy(joint, way);
        if (!strains.isEmpty()) {
            boolean stated = way.strainedBy().isPresent();
            line(
                    "    strained by: "
                            + PowerFacts.ids(strains)
                            + ": "
                            + NeedText.strainReason(device, joint, way)
                            + (stated ? at(pointer + "/strainedBy") : ""));
        }
    }

    private void needs(List<Power.Need> needs, String text, String whyNothing) {
        if (needs.isEmpty()) {
            line("  needs nothing cut: " + whyNothing);
        }
        for (String clause : text.split("; ", -1)) {
            if (!clause.isEmpty()) {
                line("  " + clause);
            }
        }
    }

    private void because(Power.Need need, String whyInside, String pointer) {
        if (need.rule() == Power.Rule.POWER_FIRST) {
            line("    inside: " + whyInside);
            line(
                    "    and "
                            + need.supply()
                            + " is cut before any work inside, by "
                            + ListText.or(isolatorIds(need.supply()))
                            + at(pointer));
        } else if (need.rule() == Power.Rule.WORK_ON_CELL) {
            line("    " + need.supply() + " comes from that part" + at(pointer));
        }
    }

    private List<String> isolatorIds(String supply) {
        return device.power().isolators(supply).map(Joint::id).toList();
    }

    private String isolators(String supply) {
        return ListText.or(isolatorIds(supply)) + ", which cuts " + supply;
    }

    private static String act(String kind, String tool, String posture, long ms, long restoreMs) {
        return String.join(", ", kind, tool, posture)
                + ", "
                + TimeText.of(ms)
                + " + "
                + TimeText.of(restoreMs);
    }

    private String at(String pointer) {
        return " (" + power.place(device.origin(pointer)) + ")";
    }

    private void line(String text) {
        out.println(Terminal.detect().fitted(text.replace('\u00a0', ' ')));
    }
}
