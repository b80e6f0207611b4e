package reseat.internal.files;

import java.util.LinkedHashMap;
import java.util.Map;
import reseat.model.Ids;
import reseat.text.QuoteText;

/** Expands an entry with several seats into one joint per seat. */
final class Seats {

    private Seats() {}

    /** Returns the id of the joint of a seat. */
    static String jointId(String entry, String seat) {
        return entry + "." + seat;
    }

    /** Returns whether any entry has {@code seats}. */
    static boolean any(Node.Fields joints) {
        EntryMap entries = joints.entries();
        for (int i = 0; i < entries.size(); i++) {
            if (entries.value(i) instanceof Node.Fields joint && joint.get("seats") != null) {
                return true;
            }
        }
        return false;
    }

    /**
     * Expands the entries with {@code seats}.
     *
     * @param joints the entries of the file
     * @param problems collects ids that are in use or too long
     * @return one entry per joint; values shared by seats keep their location
     */
    static Node.Fields spread(Node.Fields joints, Problems problems) {
        Map<String, Node.Entry> all = new LinkedHashMap<>();
        joints.entries()
                .forEach(
                        (id, entry) -> {
                            if (entry.value() instanceof Node.Fields joint
                                    && joint.get("seats") instanceof Node.Fields seats) {
                                seats.entries()
                                        .forEach(
                                                (seatId, seat) -> {
                                                    String jointId = jointId(id, seatId);
                                                    if (!Ids.valid(jointId)) {
                                                        problems.error(
                                                                seat.keyAt(),
                                                                "the id of this joint, "
                                                                        + QuoteText.of(jointId)
                                                                        + ", is longer than 64 characters");
                                                    }
                                                    put(
                                                            all,
                                                            jointId,
                                                            new Node.Entry(
                                                                    seat.keyAt(),
                                                                    one(
                                                                            joint,
                                                                            seatId,
                                                                            seat.value())),
                                                            problems);
                                                });
                                if (seats.entries().isEmpty()) {
                                    problems.error(
                                            seats.at(),
                                            id + ": a joint entry with seats needs at least one");
                                }
                            } else {
                                put(all, id, entry, problems);
                            }
                        });
        return new Node.Fields(joints.at(), all);
    }

    private static void put(
            Map<String, Node.Entry> all, String id, Node.Entry entry, Problems problems) {
        Node.Entry first = all.putIfAbsent(id, entry);
        if (first != null) {
            problems.error(
                    entry.keyAt(),
                    "two joints have the id "
                            + QuoteText.of(id)
                            + ": this seat and the entry at "
                            + first.keyAt());
        }
    }

    private static Node.Fields one(Node.Fields joint, String seatId, Node seat) {
        Node shared = joint.get("seat");
        Node own = shared == null ? seat : MergePatch.apply(shared, seat);
        Node.Fields result = joint.without("seats");
        String name = joint.text("name");
        if (name != null) {
            result = result.with("name", Node.Scalar.text(seat.at(), name + " " + seatId));
        }
        if (own instanceof Node.Fields facts) {
            Node screw = facts.get("screw");
            if (screw != null) {
                result = result.with("screw", screw);
            }
            own = new Node.Fields(seat.at(), facts.without("screw").entries());
        }
        // the location of a seat is that of its own facts, not of the shared ones
        return result.without("seat").with("seat", own);
    }
}
