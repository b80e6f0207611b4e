package reseat.internal.fasten;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.fasten.Drive;
import reseat.fasten.FastenerInputException;
import reseat.fasten.FastenerTable;
import reseat.fasten.FastenerTables;
import reseat.fasten.Friction;
import reseat.fasten.HeadSize;
import reseat.fasten.Material;
import reseat.fasten.ScrewThread;
import reseat.fasten.StrengthClass;
import reseat.fasten.TableRow;
import reseat.fasten.TorqueEstimate;
import reseat.fasten.TorqueRequest;
import reseat.model.Seat;
import reseat.text.NumberText;

/** A complete request, with the assumptions that were made. */
record CompleteRequest(
        ScrewThread thread,
        StrengthClass strength,
        Friction friction,
        HeadSize head,
        double holeMm,
        Optional<Drive> drive,
        Material material,
        Seat.Form form,
        double engagementMm,
        OptionalDouble bossOuterMm,
        OptionalDouble pullOutN,
        Optional<Material> around,
        Optional<Material> clamped,
        List<String> assumptions) {

    /** Head over thread diameter, at most: common practice, no source; washer heads reach 4. */
    private static final double WIDEST = 5;

    private static final String SMALLEST = "1.5 of the diameter";

    static TorqueEstimate estimate(FastenerTables tables, TorqueRequest request) {
        return new Estimator(tables, of(tables, request)).run();
    }

    private static CompleteRequest of(FastenerTables tables, TorqueRequest request) {
        refuseMissing(tables, request);
        List<String> assumptions = new ArrayList<>();
        ScrewThread thread = request.thread().orElseThrow();
        StrengthClass strength = request.strength().orElseThrow();
        if (thread.diameterMm() > strength.diameterMaxMm()) {
            throw new FastenerInputException(
                    "The strength of "
                            + strength.id()
                            + " is known up to M"
                            + NumberText.figures(strength.diameterMaxMm(), 6)
                            + " only, not for "
                            + thread.designation()
                            + ".");
        }
        Material material = request.material().orElseThrow();
        Friction friction =
                request.friction()
                        .orElseGet(
                                () -> {
                                    Friction unknown =
                                            tables.friction(
                                                    material.thermoplastic()
                                                            ? "plastic"
                                                            : "unknown");
                                    assumptions.add(
                                            "Friction was not given; assumed from "
                                                    + unknown.low()
                                                    + " to "
                                                    + unknown.high()
                                                    + ".");
                                    return unknown;
                                });
        HeadSize head = request.head().orElseGet(() -> smallestHead(tables, thread, assumptions));
        Seat.Form form = request.form().orElseGet(() -> form(thread, material, assumptions));
        refuseNarrow(thread, head, request.holeMm());
        request.drive()
                .ifPresent(
                        drive ->
                                new DriveRoom(tables, thread, drive)
                                        .refuse(head, request.head().isPresent()));
        if (request.drive().isEmpty()) {
            assumptions.add("The drive was not given; it does not limit the value.");
        }
        return new CompleteRequest(
                thread,
                strength,
                friction,
                head,
                request.holeMm().orElseGet(() -> hole(tables, thread, head, assumptions)),
                request.drive(),
                material,
                form,
                request.engagementMm().orElseThrow(),
                request.bossOuterMm(),
                request.pullOutN(),
                request.around(),
                request.clamped(),
                List.copyOf(assumptions));
    }

    private static void refuseNarrow(ScrewThread thread, HeadSize head, OptionalDouble holeMm) {
        double outer = head.headMm().orElse(head.bearingMm());
        if (head.bearing() == HeadSize.Bearing.NONE) {
            return;
        }
        if (outer <= thread.diameterMm()) {
            throw new FastenerInputException(
                    "A head of "
                            + NumberText.mm(outer)
                            + " is no wider than the thread "
                            + thread.designation()
                            + ".");
        }
        if (outer > WIDEST * thread.diameterMm()) {
            throw new FastenerInputException(
                    "A head of "
                            + NumberText.mm(outer)
                            + " is too wide for "
                            + thread.designation()
                            + "; no usual head is wider than "
                            + NumberText.figures(WIDEST, 2)
                            + " times the thread.");
        }
        if (holeMm.isPresent() && holeMm.getAsDouble() >= outer) {
            throw new FastenerInputException(
                    "A head of "
                            + NumberText.mm(outer)
                            + " falls through a hole of "
                            + NumberText.mm(holeMm.getAsDouble())
                            + ".");
        }
    }

    private static void refuseMissing(FastenerTables tables, TorqueRequest request) {
        List<String> missing = new ArrayList<>();
        if (request.thread().isEmpty()) {
            missing.add("the thread (such as M1.6 or ST1.8)");
        }
        if (request.strength().isEmpty()) {
            missing.add("the property class (" + names(tables, FastenerTable.CLASSES) + ")");
        }
        if (request.material().isEmpty()) {
            missing.add(
                    "the material of the thread (" + names(tables, FastenerTable.MATERIALS) + ")");
        }
        if (request.engagementMm().isEmpty()) {
            missing.add("the length of engagement (such as 3 mm)");
        }
        if (!request.assumeCautiously()) {
            if (request.friction().isEmpty()) {
                missing.add("the friction (" + names(tables, FastenerTable.FRICTION) + ")");
            }
            if (request.head().isEmpty()) {
                missing.add(
                        "the head ("
                                + names(tables, FastenerTable.HEAD_FORMS)
                                + ", or its diameter)");
            }
            if (request.drive().isEmpty()) {
                missing.add("the drive (such as T5 or PH00)");
            }
            if (request.form().isEmpty()) {
                missing.add("what the seat is (tapped, nut, insert, formed)");
            }
        }
        if (!missing.isEmpty()) {
            throw new FastenerInputException(
                    "The torque cannot be estimated. Missing: " + String.join("; ", missing) + ".");
        }
    }

    private static HeadSize smallestHead(
            FastenerTables tables, ScrewThread thread, List<String> assumptions) {
        HeadSize head =
                tables.rows(FastenerTable.HEAD_FORMS).stream()
                        .map(row -> tables.headSize(row.text("head"), thread))
                        .flatMap(Optional::stream)
                        .filter(size -> size.bearing() == HeadSize.Bearing.FLAT)
                        .min(Comparator.comparingDouble(HeadSize::bearingMm))
                        .orElseGet(
                                () ->
                                        new HeadSize(
                                                "pan",
                                                HeadSize.Bearing.FLAT,
                                                1.5 * thread.diameterMm(),
                                                OptionalDouble.empty(),
                                                OptionalDouble.empty(),
                                                SMALLEST));
        assumptions.add(
                "The head was not given; assumed to bear on "
                        + NumberText.mm(head.bearingMm())
                        + (head.source().equals(SMALLEST)
                                ? ", " + SMALLEST + "."
                                : ", the least that is known for " + thread.designation() + "."));
        return head;
    }

    private static Seat.Form form(ScrewThread thread, Material material, List<String> assumptions) {
        boolean formed = thread.series() == ScrewThread.Series.FORMING;
        boolean insert = material.group().equals("brass");
        Seat.Form form = formed ? Seat.Form.FORMED : insert ? Seat.Form.INSERT : Seat.Form.TAPPED;
        assumptions.add(
                "The form of the seat was not given; assumed "
                        + (formed
                                ? "formed by the screw."
                                : insert ? "an insert." : "a tapped hole."));
        return form;
    }

    private static double hole(
            FastenerTables tables, ScrewThread thread, HeadSize head, List<String> assumptions) {
        if (head.bearing() == HeadSize.Bearing.NONE) {
            return thread.diameterMm(); // nothing bears on its rim
        }
        OptionalDouble table = tables.clearanceHoleMm(thread.diameterMm());
        double hole = table.orElse(1.15 * thread.diameterMm());
        if (hole >= head.bearingMm()) {
            assumptions.add(
                    "The hole under the head was not given; the head would fall through the "
                            + NumberText.mm(hole)
                            + " that is usual, so it is taken as wide as the thread, "
                            + NumberText.mm(thread.diameterMm())
                            + ".");
            return thread.diameterMm();
        }
        assumptions.add(
                "The hole under the head was not given; assumed "
                        + NumberText.mm(hole)
                        + (table.isPresent() ? ", ISO 273 medium." : ", 1.15 of the diameter."));
        return hole;
    }

    private static String names(FastenerTables tables, FastenerTable table) {
        String column = table.columns().get(0).name();
        return Names.list(
                tables.rows(table).stream().map((TableRow row) -> row.text(column)).toList());
    }
}
