package reseat.devicechecks.check;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.model.Bond;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Move;
import reseat.model.Part;
import reseat.model.Seat;
import reseat.model.Severity;
import reseat.model.Way;
import reseat.text.ListText;
import reseat.text.NumberText;

/** Finds metal, blades, levers and heat at a cell. */
final class CellToolCheck implements Check {

    private static final CheckInfo INFO =
            new CheckInfo(
                    "rough-on-cell",
                    "Metal, blade, lever or heat at a cell",
                    "A way to release a joint that holds a cell, or to move a cell, with a metal tool, a blade, a lever or heat; the same on a bond with a cell among its keep-outs, and heat at a screw with a cell behind its seat.",
                    "A cell that is pierced, bent, shorted or heated burns. Screwdrivers in screws and levers at plugs do not count. Common practice, no source.",
                    Severity.ERROR,
                    List.of("safety", "cells", "tools"),
                    List.of(
                            new CheckInfo.Parameter(
                                    "besideMm",
                                    "distance of a cell behind a seat within which heat is told",
                                    "mm",
                                    "10")));

    private static final String REMEDY =
            "Release it without: a stretch strip, cleaner under the edge, a plastic card laid flat, the bare hand. Take the cell out of the way first where it is only beside.";

    @Override
    public CheckInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> run(CheckInput input) {
        List<Finding> found = new ArrayList<>();
        for (Joint joint : input.jointsInView()) {
            Optional<String> on =
                    joint.holds().stream()
                            .filter(id -> Hazards.isCell(input.device(), input.device().part(id)))
                            .findFirst();
            for (Way way : joint.ways().values()) {
                if (on.isPresent()) {
                    on(input, joint, way, on.get(), found);
                } else {
                    beside(input, joint, way, found);
                }
            }
        }
        for (Part part : Hazards.cells(input.device())) {
            part.move().ifPresent(move -> move(input, part, move, found));
        }
        return found;
    }

    private static Set<Rough> does(Device device, Joint joint, Way way) {
        Optional<Kind.Role> role = device.kindOf(joint).role();
        boolean screw = role.equals(Optional.of(Kind.Role.SCREW));
        Set<Rough> does = EnumSet.noneOf(Rough.class);
        does.addAll(Rough.ofTool(device, way.tool(), screw));
        does.addAll(Rough.ofAct(device, way.kind()));
        does.addAll(Rough.ofTexts(way.handling()));
        if (role.equals(Optional.of(Kind.Role.CONNECTOR))) {
            does.remove(Rough.LEVER); // at the plug, not at the cell
        }
        return does;
    }

    private static void on(
            CheckInput input, Joint joint, Way way, String cell, List<Finding> found) {
        Set<Rough> does = does(input.device(), joint, way);
        if (!does.isEmpty()) {
            found.add(
                    draft(input, joint, way)
                            .severity(
                                    does.equals(EnumSet.of(Rough.LEVER))
                                            ? Severity.WARNING
                                            : Severity.ERROR)
                            .says(
                                    "Way "
                                            + way.id()
                                            + " of "
                                            + joint.id()
                                            + " brings "
                                            + words(does)
                                            + " to "
                                            + cell
                                            + ", which is a cell.",
                                    REMEDY));
        }
    }

    private static void beside(CheckInput input, Joint joint, Way way, List<Finding> found) {
        Set<Rough> does = does(input.device(), joint, way);
        Device device = input.device();
        if (does.isEmpty()) {
            return;
        }
        for (Bond.KeepOut keepOut : joint.bond().map(Bond::keepOuts).orElse(List.of())) {
            if (Hazards.isCell(device, device.part(keepOut.part()))) {
                found.add(
                        draft(input, joint, way)
                                .severity(Severity.WARNING)
                                .says(
                                        "Way "
                                                + way.id()
                                                + " of "
                                                + joint.id()
                                                + " brings "
                                                + words(does)
                                                + " beside the cell "
                                                + keepOut.part()
                                                + ".",
                                        REMEDY));
            }
        }
        for (Seat.Behind behind : joint.seat().map(Seat::behind).orElse(List.of())) {
            if (does.contains(Rough.HEAT)
                    && behind.gapMm() <= input.number("besideMm")
                    && Hazards.isCell(device, device.part(behind.part()))) {
                found.add(
                        draft(input, joint, way)
                                .severity(Severity.WARNING)
                                .says(
                                        "Way "
                                                + way.id()
                                                + " of "
                                                + joint.id()
                                                + " brings heat within "
                                                + NumberText.mm(behind.gapMm())
                                                + " of the cell "
                                                + behind.part()
                                                + ".",
                                        REMEDY));
            }
        }
    }

    private static void move(CheckInput input, Part cell, Move move, List<Finding> found) {
        Set<Rough> does = EnumSet.noneOf(Rough.class);
        does.addAll(Rough.ofTool(input.device(), move.tool(), false));
        does.addAll(Rough.ofAct(input.device(), move.kind()));
        does.addAll(Rough.ofTexts(move.handling()));
        if (!does.isEmpty()) {
            found.add(
                    input.finding("/parts/" + cell.id() + "/move")
                            .evidence("tool " + move.tool() + ", " + move.kind())
                            .says(
                                    "The move of "
                                            + cell.id()
                                            + ", which is a cell, brings "
                                            + words(does)
                                            + " to it.",
                                    REMEDY));
        }
    }

    private static Finding.Draft draft(CheckInput input, Joint joint, Way way) {
        return input.finding("/joints/" + joint.id() + "/ways/" + way.id())
                .evidence("tool " + way.tool() + ", " + way.kind());
    }

    private static String words(Set<Rough> does) {
        return ListText.and(does.stream().map(Rough::words).toList());
    }
}
