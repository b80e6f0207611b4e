package reseat.internal.fasten;

import static reseat.text.NumberText.figures;
import static reseat.text.NumberText.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import reseat.fasten.FastenerTable;
import reseat.fasten.FastenerTables;
import reseat.fasten.ScrewThread;
import reseat.fasten.StackUp;
import reseat.fasten.StackUp.Outcome;
import reseat.model.Device;
import reseat.model.Part;
import reseat.model.ScrewType;
import reseat.model.Seat;
import reseat.text.ListText;

/** Lengths along the axis of a seat. */
public final class SeatReach {

    private final FastenerTables tables;
    private final Device device;
    private final String joint;
    private final Seat seat;
    private final ScrewType right;

    /** Creates the judge of a joint's seat. */
    public SeatReach(FastenerTables tables, Device device, String joint, Seat seat) {
        this.tables = tables;
        this.device = device;
        this.joint = joint;
        this.seat = seat;
        this.right = Objects.requireNonNull(device.screwTypes().get(seat.screw()));
    }

    /** Returns the thread of the seat. */
    ScrewThread seatThread() {
        return tables.thread(seat.thread().orElse(right.thread()));
    }

    /** Returns how the right screw lies here. */
    public StackUp right() {
        ScrewThread thread = seatThread();
        // the designed screw strips only if it is too short by any measure
        double scant =
                Math.max(thread.diameterMm(), tables.rule("full-turns").low() * thread.pitchMm());
        return lie(right, Math.min(leastEngagementMm(), scant));
    }

    /**
     * Returns the least engagement of good practice, in millimetres: by material where it is known,
     * else five full turns; three turns for a nut.
     */
    double leastEngagementMm() {
        ScrewThread thread = seatThread();
        double byTurns =
                tables.rule(
                                        seat.form() == Seat.Form.NUT
                                                        || seat.form() == Seat.Form.INSERT
                                                ? "insert-protrusion-turns"
                                                : "full-turns")
                                .low()
                        * thread.pitchMm();
        if (seat.material().isEmpty()
                || seat.form() == Seat.Form.NUT
                || seat.form() == Seat.Form.INSERT) {
            return byTurns;
        }
        String group = tables.material(seat.material().get()).group();
        return tables.rows(FastenerTable.ENGAGEMENT).stream()
                .filter(row -> row.text("group").equals(group))
                .mapToDouble(row -> row.required("leastDiameters") * thread.diameterMm())
                .findFirst()
                .orElse(byTurns);
    }

    /** Returns how a screw with the seat's thread lies here. */
    StackUp lie(ScrewType type, double leastMm) {
        List<String> missing = new ArrayList<>();
        if (seat.clampedMm().isEmpty()) {
            missing.add("clamped thickness");
        }
        if (seat.threadedMm().isEmpty()) {
            missing.add("depth of thread");
        }
        if (!missing.isEmpty()) {
            return new StackUp(
                    joint,
                    type.id(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    leastEngagementMm(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    List.of(),
                    Outcome.UNKNOWN,
                    "It cannot be determined how "
                            + type.id()
                            + " lies in "
                            + joint
                            + ": the "
                            + ListText.and(missing)
                            + " of the seat "
                            + (missing.size() == 1 ? "is" : "are")
                            + " not known.",
                    missing);
        }
        double clamped = seat.clampedMm().getAsDouble();
        double threaded = seat.threadedMm().getAsDouble();
        double reach = type.lengthMm() - clamped;
        double shank =
                Math.max(
                        0,
                        type.lengthMm() - type.threadLengthMm().orElse(type.lengthMm()) - clamped);
        double engaged = Math.max(0, Math.min(reach, threaded) - shank);
        boolean through = seat.depthMm().isEmpty();
        OptionalDouble bottom =
                through ? OptionalDouble.empty() : OptionalDouble.of(room(threaded) - reach);
        double end = through ? threaded : seat.depthMm().getAsDouble();
        double protrusion = Math.max(0, reach - end);
        List<StackUp.Behind> behind = behind(protrusion);
        Outcome outcome = outcome(reach, engaged, shank, bottom, behind, leastMm);
        return new StackUp(
                joint,
                type.id(),
                OptionalDouble.of(reach),
                OptionalDouble.of(engaged),
                leastEngagementMm(),
                bottom,
                OptionalDouble.of(protrusion),
                behind,
                outcome,
                told(type, outcome, engaged, shank, bottom, behind, leastMm),
                missing);
    }

    /**
     * Returns how far a screw may reach into a blind hole: its depth, or the end of a tapped
     * thread.
     */
    private double room(double threaded) {
        double depth = seat.depthMm().orElse(Double.POSITIVE_INFINITY);
        return seat.form() == Seat.Form.TAPPED ? Math.min(depth, threaded + incompleteMm()) : depth;
    }

    /**
     * A tap leaves this much incomplete thread, into which a screw may be forced but not clamped
     * well.
     */
    private double incompleteMm() {
        return tables.rule("incomplete-threads").low() * seatThread().pitchMm();
    }

    private List<StackUp.Behind> behind(double protrusion) {
        List<StackUp.Behind> all = new ArrayList<>();
        for (Seat.Behind item : seat.behind()) {
            Part part = device.part(item.part());
            all.add(
                    new StackUp.Behind(
                            part.id(),
                            part.name(),
                            device.kindOf(part).role(),
                            item.gapMm() - protrusion));
        }
        return all;
    }

    private Outcome outcome(
            double reach,
            double engaged,
            double shank,
            OptionalDouble bottom,
            List<StackUp.Behind> behind,
            double leastMm) {
        if (reach <= 0) {
            return Outcome.NO_ENTRY;
        }
        if (bottom.orElse(0) < -1e-9 || shank > 1e-9) {
            return Outcome.BOTTOMS;
        }
        double nearest = behind.stream().mapToDouble(StackUp.Behind::clearanceMm).min().orElse(1);
        if (nearest < -tables.rule("pierce-mm").low()) {
            return Outcome.PIERCES;
        }
        if (nearest <= 1e-9 || bottom.orElse(1) <= 1e-9) {
            return Outcome.TOUCHES;
        }
        return engaged < leastMm - 1e-9 ? Outcome.STRIPS : Outcome.FITS;
    }

    private String told(
            ScrewType type,
            Outcome outcome,
            double engaged,
            double shank,
            OptionalDouble bottom,
            List<StackUp.Behind> behind,
            double leastMm) {
        String start = type.id() + " in " + joint + " ";
        return switch (outcome) {
            case NO_ENTRY -> start + "is too short to reach the thread.";
            case BOTTOMS ->
                    shank > 1e-9
                            ? start
                                    + "stops on its own shank, "
                                    + mm(shank)
                                    + " before the head clamps."
                            : start
                                    + "bottoms "
                                    + mm(-bottom.orElse(0))
                                    + " before the head clamps: its tip touches the ground of the"
                                    + " hole.";
            case TOUCHES ->
                    hits(behind).length() > 1
                            ? start + hits(behind)
                            : start + "touches the ground of the hole as the head clamps.";
            case PIERCES -> start + hits(behind);
            case STRIPS ->
                    start
                            + "engages "
                            + mm(engaged)
                            + " ("
                            + figures(seatThread().turns(engaged), 2)
                            + " turns); "
                            + mm(leastMm)
                            + " is the least for this seat.";
            default ->
                    start
                            + "engages "
                            + mm(engaged)
                            + (engaged < leastEngagementMm() - 1e-9
                                    ? "; "
                                            + mm(leastEngagementMm())
                                            + " is good practice in this seat."
                                    : ".");
        };
    }

    private static String hits(List<StackUp.Behind> behind) {
        List<String> hits = new ArrayList<>();
        for (StackUp.Behind item : behind) {
            if (item.clearanceMm() < -1e-9) {
                hits.add("goes " + mm(-item.clearanceMm()) + " into " + item.name());
            } else if (item.clearanceMm() <= 1e-9) {
                hits.add("touches " + item.name());
            }
        }
        return ListText.and(hits) + ".";
    }
}
