package reseat.internal.files;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import reseat.model.Bond;
import reseat.model.Joint;
import reseat.model.Origin;
import reseat.model.ScrewType;
import reseat.model.Seat;
import reseat.text.NumberText;

/**
 * Finds lengths and torques that no portable device has, though they are numbers of the right kind:
 * a screw of 8 m is one of 8 mm with a slip. What cannot be is an error, what hardly is a warning.
 * The limits are common practice, no source.
 */
final class Plausible {

    /** A limit: above {@code odd} it is warned of, above {@code wrong} refused. */
    private enum Limit {
        SCREW(60, 200),
        HEAD(20, 40),
        SEAT(60, 200),
        BOSS(30, 100),
        GAP(100, 500),
        STRIP(50, 200),
        THICKNESS(5, 20),
        DEPTH(50, 300),
        TORQUE(5, 25);

        private final double odd;
        private final double wrong;

        Limit(double odd, double wrong) {
            this.odd = odd;
            this.wrong = wrong;
        }
    }

    /** Below this a screw has no thread to speak of, in millimetres. */
    private static final double LEAST_SCREW_MM = 0.5;

    /** Below this nothing is tightened, in newton metres; S0.5 takes about 0.002. */
    private static final double LEAST_TORQUE_NM = 0.001;

    private final Draft draft;
    private final Places places;
    private final Problems problems;
    private final Set<Origin> told = new HashSet<>();

    Plausible(Draft draft, Places places, Problems problems) {
        this.draft = draft;
        this.places = places;
        this.problems = problems;
    }

    void run() {
        draft.screwTypes.values().forEach(this::screwType);
        for (Joint joint : draft.joints.values()) {
            if (joint.seat().isPresent()) {
                seat(joint, joint.seat().get());
            }
            if (joint.bond().isPresent()) {
                bond(joint, joint.bond().get());
            }
        }
    }

    /** Returns where a quantity stands, written with a unit or as a bare number. */
    private Origin at(String pointer) {
        Map<String, Origin> all = places.all();
        for (String key : List.of(pointer, pointer + "Mm", pointer + "Nm")) {
            Origin origin = all.get(key);
            if (origin != null) {
                return origin;
            }
        }
        return places.at(pointer);
    }

    private void screwType(ScrewType type) {
        String at = "/screwTypes/" + type.id();
        String who = "screw type " + type.id();
        length(Limit.SCREW, at + "/length", who + ": a length", type.lengthMm());
        // 0 where the length is missing or wrong, which is told elsewhere
        if (type.lengthMm() > 0 && type.lengthMm() < LEAST_SCREW_MM) {
            problems.warning(
                    at(at + "/length"),
                    who
                            + ": a length of "
                            + NumberText.figures(type.lengthMm(), 2)
                            + " mm is hardly a screw; check the unit");
        }
        length(Limit.HEAD, at + "/headDiameter", who + ": a head", type.headDiameterMm());
        length(Limit.HEAD, at + "/headHeight", who + ": a head height", type.headHeightMm());
        if (type.lengthMm() > 0 && type.threadLengthMm().orElse(0) > type.lengthMm()) {
            problems.error(
                    at(at + "/threadLength"),
                    who
                            + ": its thread of "
                            + NumberText.mm(type.threadLengthMm().getAsDouble())
                            + " is longer than the screw, "
                            + NumberText.mm(type.lengthMm()));
        }
        draft.outline.ifPresent(
                outline -> {
                    double across = Math.hypot(outline.widthMm(), outline.heightMm());
                    if (type.lengthMm() > across && type.lengthMm() <= Limit.SCREW.wrong) {
                        problems.error(
                                at(at + "/length"),
                                who
                                        + ": a length of "
                                        + NumberText.mm(type.lengthMm())
                                        + " is more than the device measures");
                    }
                });
    }

    private void seat(Joint joint, Seat seat) {
        String at = "/joints/" + joint.id() + "/seat/";
        String who = "joint " + joint.id();
        length(Limit.SEAT, at + "clamped", who + ": a clamped thickness", seat.clampedMm());
        length(Limit.SEAT, at + "threaded", who + ": a depth of thread", seat.threadedMm());
        length(Limit.SEAT, at + "depth", who + ": a depth", seat.depthMm());
        length(Limit.BOSS, at + "bossOuter", who + ": a boss", seat.bossOuterMm());
        seat.behind()
                .forEach(
                        behind ->
                                length(Limit.GAP, at + "behind", who + ": a gap", behind.gapMm()));
        seat.torqueNm()
                .ifPresent(
                        nm -> {
                            over(
                                    Limit.TORQUE,
                                    at + "torque",
                                    who + ": a torque",
                                    nm,
                                    NumberText.figures(nm, 3) + " N·m");
                            if (nm < LEAST_TORQUE_NM && told.add(at(at + "torque"))) {
                                problems.warning(
                                        at(at + "torque"),
                                        who
                                                + ": a torque of "
                                                + NumberText.figures(nm, 3)
                                                + " N·m tightens nothing; check the unit");
                            }
                        });
    }

    private void bond(Joint joint, Bond bond) {
        String at = "/joints/" + joint.id() + "/bond/";
        String who = "joint " + joint.id();
        length(Limit.DEPTH, at + "margin", who + ": a margin", bond.marginMm());
        length(Limit.THICKNESS, at + "thickness", who + ": an adhesive", bond.thicknessMm());
        for (Bond.Strip strip : bond.strips()) {
            length(Limit.STRIP, at + "strips/" + strip.id(), who + ": a strip", strip.widthMm());
        }
        for (Bond.GivenDepth given : bond.givenDepths()) {
            length(Limit.DEPTH, at + "givenDepths", who + ": a depth of cut", given.depthMm());
        }
    }

    private void length(Limit limit, String at, String what, OptionalDouble mm) {
        mm.ifPresent(length -> length(limit, at, what, length));
    }

    private void length(Limit limit, String at, String what, double mm) {
        over(
                limit,
                at,
                what,
                mm,
                mm >= 1000 ? NumberText.figures(mm / 1000, 3) + " m" : NumberText.mm(mm));
    }

    private void over(Limit limit, String at, String what, double value, String written) {
        if (value <= limit.odd) {
            return;
        }
        Origin where = at(at);
        if (!told.add(where)) {
            return; // seats share it
        }
        if (value > limit.wrong) {
            problems.error(
                    where,
                    what + " of " + written + " cannot be in a portable device; check the unit");
        } else {
            problems.warning(
                    where,
                    what + " of " + written + " is odd in a portable device; check the unit");
        }
    }
}
