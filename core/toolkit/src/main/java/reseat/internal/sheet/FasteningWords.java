package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.fasten.SeatOrder;
import reseat.fasten.TighteningPattern.Stage;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.ScrewType;
import reseat.model.Seat;
import reseat.plan.Fastening;
import reseat.sheet.Names;
import reseat.text.NumberText;

/** Words for how screws go in: by hand first, then in passes to a torque. */
record FasteningWords(Device device, Names names) {

    /**
     * Returns how screws go in.
     *
     * @param joints ids of those that the step puts in, of one type
     * @param last whether all are in then, so that they are tightened
     */
    List<String> of(Fastening fastening, List<String> joints, boolean last) {
        List<String> words = new ArrayList<>();
        joints.stream().map(this::restore).distinct().forEach(words::add);
        int all = fastening.joints().size();
        if (!last) {
            words.add("By hand only, two or three turns: they are tightened with the next ones");
            return words;
        }
        if (all > 1) {
            words.add(
                    joints.size() < all
                            ? "These by hand too, two or three turns. Then all " + all + ":"
                            : "All of them by hand first, two or three turns. Then:");
            passes(fastening, words);
        }
        words.addAll(fastening.order().notes());
        Map<String, List<String>> torques = new LinkedHashMap<>();
        for (String id : fastening.joints()) {
            torques.computeIfAbsent(torque(seat(id)), t -> new ArrayList<>()).add(id);
        }
        torques.forEach(
                (torque, ids) ->
                        words.add(
                                "Torque"
                                        + (torques.size() > 1 ? " of " + names.together(ids) : "")
                                        + ": "
                                        + torque
                                        + "."));
        return words;
    }

    private void passes(Fastening fastening, List<String> words) {
        String before = "";
        for (SeatOrder.Pass pass : fastening.order().passes()) {
            if (pass.stage() == Stage.START_BY_HAND) {
                continue;
            }
            String order = names.inOrder(pass.joints());
            String where = order.equals(before) ? "the same order" : order;
            before = order;
            words.add(
                    pass.stage() == Stage.GO_ROUND
                            ? "once round at the full torque, nothing should turn: " + where
                            : "to " + share(fastening, pass.torqueShare()) + ": " + where);
        }
    }

    /** Returns a share of the torque, in newton metres if all seats have the same torque. */
    private String share(Fastening fastening, double share) {
        List<Double> given =
                fastening.joints().stream()
                        .map(id -> seat(id).torqueNm().orElse(-1))
                        .distinct()
                        .toList();
        String percent = Math.round(share * 100) + " % of the torque";
        if (given.size() == 1 && given.get(0) > 0 && share < 1) {
            return percent + " (" + newtonMetres(given.get(0) * share) + ")";
        }
        return share < 1 ? percent : "the full torque";
    }

    private String restore(String id) {
        Joint joint = device.joint(id);
        ScrewType type = device.screwTypes().get(seat(id).screw());
        if (type != null && type.patch()) {
            return "New "
                    + type.id()
                    + ", its locking patch holds once: start by hand, then tighten; scrap the old";
        }
        String kind = device.kindOf(joint).restore();
        return kind.isEmpty() ? "Start by hand on the old thread, then tighten" : kind;
    }

    private static String torque(Seat seat) {
        if (seat.torqueNm().isEmpty()) {
            return "not given";
        }
        return newtonMetres(seat.torqueNm().getAsDouble())
                + (seat.torqueSource().isEmpty() ? "" : " (" + seat.torqueSource() + ")");
    }

    private static String newtonMetres(double value) {
        return NumberText.of(value) + "\u00a0N·m";
    }

    private Seat seat(String joint) {
        return device.joint(joint).seat().orElseThrow();
    }
}
