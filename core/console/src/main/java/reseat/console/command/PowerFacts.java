package reseat.console.command;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Origin;
import reseat.model.Part;
import reseat.model.Power;
import reseat.query.NeedText;
import reseat.text.ListText;

/** What has to be without power before it is touched, and why, in words for {@code reseat facts}. */
final class PowerFacts {

    private final Device device;
    private final Power power;

    PowerFacts(Device device) {
        this.device = device;
        this.power = device.power();
    }

    /** Returns where a fact was read: a line of the device file, or another file and line. */
    String place(Origin origin) {
        if (origin.line() == 0) {
            return origin.file();
        }
        return origin.file().equals(device.origin("").file())
                ? "line " + origin.line()
                : origin.file() + ":" + origin.line();
    }

    /** Returns the lines about each supply, and about what can be done with the device closed. */
    List<String> supplies() {
        List<String> lines = new ArrayList<>();
        device.supplies().keySet().forEach(supply -> lines.addAll(supply(supply)));
        lines.add("outside, so that nothing need be cut: " + ids(outside()));
        return lines;
    }

    /** Returns the lines about one supply. */
    List<String> supply(String id) {
        List<String> isolators = power.isolators(id).map(Joint::id).toList();
        String of =
                Optional.ofNullable(device.supplies().get(id))
                        .flatMap(known -> known.of())
                        .map(part -> " of " + part)
                        .orElse("");
        String dropped = power.dropped().get(id);
        String first;
        if (dropped != null) {
            first = "the rules do not apply to it: " + dropped;
        } else if (power.first().contains(id)) {
            first = "cut before any work inside, by " + ListText.or(isolators);
        } else {
            first = "cut only where it is needed, by " + ListText.or(isolators);
        }
        List<String> lines = new ArrayList<>(List.of(id + of + ": " + first));
        if (!isolators.isEmpty()) {
            lines.add(
                    "  on the way to it: "
                            + ids(both(power.partsOnTheWay(id), power.jointsOnTheWay(id))));
        }
        return lines;
    }

    private List<String> outside() {
        return both(power.outsideParts(), power.outsideJoints());
    }

    private static List<String> both(Collection<String> parts, Collection<String> joints) {
        List<String> all = new ArrayList<>(parts);
        all.addAll(joints);
        return all;
    }

    /** Lists ids, the joints of one entry with seats together. */
    static String ids(List<String> ids) {
        Map<String, List<String>> rows = new LinkedHashMap<>();
        for (String id : ids) {
            int dot = id.lastIndexOf('.');
            rows.computeIfAbsent(dot < 0 ? id : id.substring(0, dot), row -> new ArrayList<>())
                    .add(id);
        }
        return rows.isEmpty()
                ? "none"
                : String.join(
                        ", ",
                        rows.entrySet().stream()
                                .map(
                                        row ->
                                                row.getValue().size() == 1
                                                        ? row.getValue().get(0)
                                                        : row.getKey()
                                                                + " ("
                                                                + row.getValue().size()
                                                                + ")")
                                .toList());
    }

    /** Returns what a joint needs cut, as the end of a line; empty if nothing. */
    String needs(Joint joint) {
        return needs(
                power.why(joint),
                need -> NeedText.reason(device, joint, need),
                NeedText.statedAt(device, joint),
                power.waived(joint));
    }

    /** Returns what a part needs cut before it is moved alone; empty if nothing. */
    String needs(Part part) {
        if (part.move().isEmpty()) {
            return "";
        }
        return needs(
                power.why(List.of(part.id())),
                need -> NeedText.reason(device, part, need),
                NeedText.statedAt(device, part),
                power.waived(part));
    }

    private interface Reason {
        String of(Power.Need need);
    }

    private String needs(
            List<Power.Need> needs, Reason reason, Optional<Origin> stated, List<String> waived) {
        Map<String, List<String>> byReason = new LinkedHashMap<>();
        for (Power.Need need : needs) {
            String place =
                    need.rule() == Power.Rule.STATED
                            ? stated.map(at -> ", " + place(at)).orElse("")
                            : "";
            byReason.computeIfAbsent(reason.of(need) + place, why -> new ArrayList<>())
                    .add(need.supply());
        }
        StringBuilder text = new StringBuilder();
        byReason.forEach(
                (why, supplies) ->
                        text.append("; needs ")
                                .append(ListText.and(supplies))
                                .append(" cut: ")
                                .append(why));
        if (!waived.isEmpty()) {
            text.append("; waived: ")
                    .append(ListText.and(waived))
                    .append(" may be on")
                    .append(stated.map(at -> ", " + place(at)).orElse(""));
        }
        return text.toString();
    }

    /** Returns why nothing must be cut before a joint is released. */
    String whyNothing(Joint joint) {
        if (joint.needs().isPresent()) {
            return NeedText.stated(device, joint)
                    + NeedText.statedAt(device, joint).map(at -> ", " + place(at)).orElse("");
        }
        return whyNothing(
                power.outsideJoints().contains(joint.id()),
                supply -> power.jointsOnTheWay(supply).contains(joint.id()));
    }

    /** Returns why nothing must be cut before a part is moved. */
    String whyNothing(Part part) {
        if (part.needs().isPresent()) {
            return NeedText.stated(device, part)
                    + NeedText.statedAt(device, part).map(at -> ", " + place(at)).orElse("");
        }
        return whyNothing(
                power.outsideParts().contains(part.id()),
                supply -> power.partsOnTheWay(supply).contains(part.id()));
    }

    private interface OnTheWay {
        boolean to(String supply);
    }

    private String whyNothing(boolean outside, OnTheWay onTheWay) {
        for (String supply : power.cuttable()) {
            if (onTheWay.to(supply)) {
                return "it is on the way to what cuts " + supply;
            }
        }
        if (outside) {
            return "it is done with the device closed";
        }
        return power.cuttable().isEmpty()
                ? "no supply can be cut"
                : "the rules do not apply to " + ListText.and(power.dropped().keySet());
    }

    /** Returns why a joint is not outside, as a clause. */
    String whyInside(Joint joint) {
        return "it lies under " + firstOutOf(joint.under(), power.outsideParts());
    }

    /** Returns why a part is not outside, as a clause. */
    String whyInside(Part part) {
        if (!power.outsideParts().containsAll(part.under())) {
            return "it lies under " + firstOutOf(part.under(), power.outsideParts());
        }
        return device.joints().values().stream()
                .filter(joint -> joint.holds().contains(part.id()))
                .filter(joint -> !joint.slack() && !joint.gives())
                .filter(joint -> !power.outsideJoints().contains(joint.id()))
                .findFirst()
                .map(joint -> "it is held by " + joint.id() + ", which is inside")
                .orElse("it covers what is inside, so moving it opens the device");
    }

    private static String firstOutOf(List<String> parts, Set<String> outside) {
        return parts.stream()
                .filter(part -> !outside.contains(part))
                .findFirst()
                .map(part -> part + ", which is not outside")
                .orElse("nothing");
    }
}
