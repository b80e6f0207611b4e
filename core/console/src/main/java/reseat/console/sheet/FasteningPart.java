package reseat.console.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.fasten.SeatOrder;
import reseat.fasten.TighteningPattern.Stage;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Seat;
import reseat.plan.Fastening;

/** How screws go in: by hand first, then in passes to a torque. */
final class FasteningPart {

    private final Device device;
    private final Names names;
    private final AdvicePart advice;

    FasteningPart(Device device, Names names, AdvicePart advice) {
        this.device = device;
        this.names = names;
        this.advice = advice;
    }

    void write(Fastening fastening) {
        List<SeatOrder.Pass> passes = fastening.order().passes();
        fastening.joints().stream().map(this::restore).distinct().forEach(advice::bullet);
        if (fastening.joints().size() > 1) {
            advice.bullet("All of them by hand first, two or three turns. Then:");
            String before = "";
            for (SeatOrder.Pass pass : passes) {
                if (pass.stage() == Stage.START_BY_HAND) {
                    continue;
                }
                String order = names.inOrder(pass.joints());
                String where = order.equals(before) ? "the same order" : order;
                before = order;
                advice.bullet(
                        pass.stage() == Stage.GO_ROUND
                                ? "once round at the full torque, nothing should turn: " + where
                                : "to " + share(fastening, pass.torqueShare()) + ": " + where);
            }
        }
        fastening.order().notes().forEach(note -> advice.bullet(note));
        Map<String, List<String>> torques = new LinkedHashMap<>();
        for (String id : fastening.joints()) {
            torques.computeIfAbsent(Names.torque(seat(id)), t -> new ArrayList<>()).add(id);
        }
        torques.forEach(
                (torque, ids) ->
                        advice.bullet(
                                "Torque"
                                        + (torques.size() > 1 ? " of " + names.together(ids) : "")
                                        + ": "
                                        + torque
                                        + "."));
    }

    /** Returns a share of the torque, in newton metres where all seats have the same. */
    private String share(Fastening fastening, double share) {
        List<Double> given =
                fastening.joints().stream()
                        .map(id -> seat(id).torqueNm().orElse(-1))
                        .distinct()
                        .toList();
        String percent = Math.round(share * 100) + " % of the torque";
        if (given.size() == 1 && given.get(0) > 0 && share < 1) {
            return percent + " (" + Names.number(given.get(0) * share) + "\u00a0N·m)";
        }
        return share < 1 ? percent : "the full torque";
    }

    private String restore(String id) {
        Joint joint = device.joint(id);
        String kind = device.kindOf(joint).restore();
        return kind.isEmpty() ? "Start by hand on the old thread, then tighten" : kind;
    }

    Seat seat(String joint) {
        return device.joint(joint).seat().orElseThrow();
    }
}
