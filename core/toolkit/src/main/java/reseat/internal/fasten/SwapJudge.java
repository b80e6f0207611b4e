package reseat.internal.fasten;

import static reseat.text.NumberText.mm;

import java.util.List;
import java.util.OptionalDouble;
import reseat.fasten.FastenerTables;
import reseat.fasten.ScrewThread;
import reseat.fasten.ScrewThread.Series;
import reseat.fasten.StackUp;
import reseat.fasten.StackUp.Outcome;
import reseat.model.Device;
import reseat.model.ScrewType;
import reseat.model.Seat;

/**
 * Determines what a screw does in a seat that is not its own.
 *
 * <p>By thread: one whose outside is no larger than the core of the seat's thread drops in and is
 * loose; one that is thinner, but catches, wobbles on the crests and is loose; one of the same
 * diameter and another pitch, or up to 0.12 mm thicker, can be forced and strips; anything thicker
 * does not start. A screw of the same thread is then judged by its length.
 */
public final class SwapJudge {

    /** A screw this much thicker than the seat's thread can still be forced in, in millimetres. */
    private static final double FORCED_MM = 0.12;

    private final FastenerTables tables;
    private final String joint;
    private final SeatReach reach;
    private final ScrewThread seatThread;
    private final double leastMm;

    /** Creates the judge of a joint's seat. */
    public SwapJudge(FastenerTables tables, Device device, String joint, Seat seat) {
        this.tables = tables;
        this.joint = joint;
        this.reach = new SeatReach(tables, device, joint, seat);
        this.seatThread = reach.seatThread();
        // a seat that is short by design is no worse for a screw that engages as much as the right
        // one
        double right = reach.right().engagementMm().orElse(0);
        this.leastMm =
                right > 0 ? Math.min(reach.leastEngagementMm(), right) : reach.leastEngagementMm();
    }

    /** Returns what a screw does here. */
    public StackUp judge(ScrewType type) {
        ScrewThread screw = tables.thread(type.thread());
        StackUp lies = reach.lie(type, leastMm);
        boolean formedBoth =
                screw.series() == Series.FORMING && seatThread.series() == Series.FORMING;
        double d = screw.diameterMm() - seatThread.diameterMm();
        boolean samePitch = Math.abs(screw.pitchMm() - seatThread.pitchMm()) < 1e-9;
        boolean sameProfile =
                screw.series().metricProfile() == seatThread.series().metricProfile() || formedBoth;
        if (Math.abs(d) < 1e-9 && samePitch && sameProfile) {
            return lies;
        }
        if (d > FORCED_MM) {
            return with(lies, Outcome.NO_ENTRY, "is too thick to start.");
        }
        double core = seatThread.minorDiameterMm();
        if (screw.diameterMm() <= core) {
            return dropsIn(lies, "drops through the thread without catching.");
        }
        if (d < -1e-9) {
            return dropsIn(
                    lies,
                    "catches on "
                            + mm((screw.diameterMm() - core) / 2)
                            + " of flank and pulls out.");
        }
        if (lies.reachMm().orElse(1) <= 0) {
            return lies;
        }
        return with(
                worse(lies.outcome(), Outcome.STRIPS),
                lies,
                "has another thread ("
                        + screw.designation()
                        + " in "
                        + seatThread.designation()
                        + "), cuts its own and strips.");
    }

    private StackUp dropsIn(StackUp lies, String told) {
        return with(worse(lies.outcome(), Outcome.LOOSE), lies, told);
    }

    private static Outcome worse(Outcome byLength, Outcome byThread) {
        return byLength == Outcome.TOUCHES || byLength == Outcome.PIERCES ? byLength : byThread;
    }

    private StackUp with(Outcome outcome, StackUp lies, String told) {
        boolean hits = outcome == Outcome.TOUCHES || outcome == Outcome.PIERCES;
        return with(lies, outcome, hits ? told + " " + lies.told() : told);
    }

    private StackUp with(StackUp lies, Outcome outcome, String told) {
        return new StackUp(
                joint,
                lies.screw(),
                lies.reachMm(),
                OptionalDouble.of(0),
                lies.goodEngagementMm(),
                lies.bottomClearanceMm(),
                lies.protrusionMm(),
                lies.behind(),
                outcome,
                lies.screw() + " in " + joint + " " + told,
                lies.missing().isEmpty() ? List.of() : lies.missing());
    }
}
