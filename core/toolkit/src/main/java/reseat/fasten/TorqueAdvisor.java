package reseat.fasten;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import reseat.fasten.TorqueAdvice.Basis;
import reseat.internal.fasten.RequestText;
import reseat.internal.fasten.TorqueEstimates;
import reseat.model.Device;
import reseat.model.ScrewType;
import reseat.model.Seat;
import reseat.text.NumberText;

/**
 * Determines the torque of a screw: the one that the maker gives for the seat; else the one in the
 * table of the device family; else an estimate, marked as such. There are no silent defaults: a
 * missing input of an estimate is an error or, if assumptions are allowed, a listed assumption.
 */
public final class TorqueAdvisor {

    private static final String FAMILY_CAUTION =
            "This torque comes from the table of the device family, not from the maker."
                    + " The maker's service document and local codes take precedence, and the work"
                    + " must be done by qualified people.";

    private static final String NO_SOURCE_CAUTION =
            "The device file states this torque without a source: it may not be the maker's. The"
                    + " maker's service document and local codes take precedence, and the work"
                    + " must be done by qualified people.";

    private final FastenerTables tables;

    private TorqueAdvisor(FastenerTables tables) {
        this.tables = Objects.requireNonNull(tables, "tables");
    }

    /** Returns an advisor that works with these tables. */
    public static TorqueAdvisor of(FastenerTables tables) {
        return new TorqueAdvisor(tables);
    }

    /**
     * Parses a request in words: {@code M1.6 8.8 pan T5 into magnesium, 3 mm, oiled}. Cautious
     * assumptions are allowed for friction, head, drive and form of the seat.
     *
     * @throws FastenerInputException if a word is not known, a unit is missing or impossible, or a
     *     length is not above 0
     */
    public TorqueRequest read(String text) {
        return RequestText.read(tables, text);
    }

    /**
     * Computes a torque: the least of what the screw withstands in tension and torsion (VDI 2230),
     * in torsion alone (ISO 898-7, the part that the thread takes), what both threads bear in shear
     * (FED-STD-H28), what an insert holds and what the drive withstands, each at a share that
     * {@link FastenerTable#GUIDELINES} gives. Docs: core/docs/fasteners.md.
     *
     * @throws FastenerInputException if required input is missing; the message names all of it
     */
    public TorqueEstimate estimate(TorqueRequest request) {
        return TorqueEstimates.estimate(tables, request);
    }

    /**
     * Returns the torque of a seat.
     *
     * @param joint id of a joint with a seat
     * @param conditions what the device file does not state
     * @throws FastenerInputException if no torque is given and none can be estimated
     * @throws IllegalArgumentException if the joint does not exist or has no seat
     */
    public TorqueAdvice forSeat(Device device, String joint, SeatConditions conditions) {
        Seat seat =
                device.joint(joint)
                        .seat()
                        .orElseThrow(
                                () ->
                                        new IllegalArgumentException(
                                                joint + " is not a screw in a seat"));
        Optional<TorqueEstimate> estimate = Optional.empty();
        String noEstimate = "";
        try {
            estimate = Optional.of(estimate(request(device, joint, conditions)));
        } catch (FastenerInputException e) {
            noEstimate = String.valueOf(e.getMessage());
        }
        if (seat.torqueNm().isPresent()) {
            double given = seat.torqueNm().getAsDouble();
            boolean sourced = !seat.torqueSource().isEmpty();
            List<String> cautions = new ArrayList<>();
            if (!sourced) {
                cautions.add(NO_SOURCE_CAUTION);
            }
            cautions.addAll(besides(estimate, given));
            return new TorqueAdvice(
                    sourced ? Basis.MAKER : Basis.STATED,
                    given,
                    given,
                    given,
                    sourced ? seat.torqueSource() : "no source is stated",
                    estimate,
                    noEstimate,
                    cautions);
        }
        Optional<TableRow> family = familyRow(device, joint);
        if (family.isPresent()) {
            double value = tables.torqueUnits().parse(family.get().text("torque")).nm();
            return new TorqueAdvice(
                    Basis.FAMILY,
                    value,
                    value,
                    value,
                    family.get().source(),
                    estimate,
                    noEstimate,
                    Stream.concat(Stream.of(FAMILY_CAUTION), besides(estimate, value).stream())
                            .toList());
        }
        if (estimate.isEmpty()) {
            throw new FastenerInputException("No torque is given for " + joint + ". " + noEstimate);
        }
        TorqueEstimate only = estimate.get();
        return new TorqueAdvice(
                Basis.ESTIMATE,
                only.valueNm(),
                only.lowNm(),
                only.highNm(),
                only.governing().kind().words(),
                estimate,
                "",
                only.cautions());
    }

    /** The cautions of a given torque: those about the seat, and a limit that it exceeds. */
    private static List<String> besides(Optional<TorqueEstimate> estimate, double givenNm) {
        if (estimate.isEmpty()) {
            return List.of();
        }
        List<String> cautions = new ArrayList<>(estimate.get().cautions());
        cautions.remove(TorqueEstimate.CAUTION);
        estimate.get().limits().stream()
                .filter(limit -> limit.utmostNm() < givenNm)
                .min(Comparator.comparingDouble(TorqueEstimate.Limit::utmostNm))
                .ifPresent(
                        limit ->
                                cautions.add(
                                        "By estimate "
                                                + limit.kind().words()
                                                + " above "
                                                + NumberText.figures(limit.utmostNm(), 3)
                                                + " N·m, below the torque given."));
        return cautions;
    }

    /**
     * Returns the row of {@link FastenerTable#FAMILY_TORQUES} that holds for a seat, if any.
     *
     * @throws IllegalArgumentException if the joint does not exist or has no seat
     */
    public Optional<TableRow> familyRow(Device device, String joint) {
        Seat seat =
                device.joint(joint)
                        .seat()
                        .orElseThrow(() -> new IllegalArgumentException(joint + " has no seat"));
        ScrewType type = Objects.requireNonNull(device.screwTypes().get(seat.screw()));
        List<TableRow> fitting =
                tables.rows(FastenerTable.FAMILY_TORQUES).stream()
                        .filter(
                                row ->
                                        !device.family().isEmpty()
                                                && row.text("family").equals(device.family()))
                        .filter(
                                row ->
                                        tables.thread(row.text("thread"))
                                                .equals(tables.thread(type.thread())))
                        .toList();
        for (boolean any : new boolean[] {false, true}) {
            for (TableRow row : fitting) {
                String material = row.text("material");
                boolean same =
                        any
                                ? material.equals("any")
                                : !material.equals("any")
                                        && seat.material().isPresent()
                                        && tables.material(material)
                                                .equals(tables.material(seat.material().get()));
                if (same) {
                    return Optional.of(row);
                }
            }
        }
        return Optional.empty();
    }

    /**
     * Returns what the device file states about a seat, as a request.
     *
     * @throws FastenerInputException if a name in it is unknown, or the screw does not reach the
     *     thread
     * @throws IllegalArgumentException if the joint does not exist or has no seat
     */
    public TorqueRequest request(Device device, String joint, SeatConditions conditions) {
        Seat seat =
                device.joint(joint)
                        .seat()
                        .orElseThrow(
                                () ->
                                        new IllegalArgumentException(
                                                joint + " is not a screw in a seat"));
        ScrewType type = Objects.requireNonNull(device.screwTypes().get(seat.screw()));
        ScrewThread thread = tables.thread(type.thread());
        TorqueRequest.Builder request = TorqueRequest.builder().thread(thread).form(seat.form());
        if (type.strengthClass().isPresent()) {
            request.strength(tables.strengthClass(type.strengthClass().get()));
        } else if (thread.series() == ScrewThread.Series.FORMING) {
            request.strength(tables.strengthClass("hardened"));
        }
        conditions.friction().ifPresent(request::friction);
        if (tables.bearing(type.head()) == HeadSize.Bearing.NONE) {
            request.head(tables.headSize(type.head(), thread.diameterMm()));
        } else if (type.headDiameterMm().isPresent()) {
            request.head(tables.headSize(type.head(), type.headDiameterMm().getAsDouble()));
        } else {
            tables.headSize(type.head(), thread, Optional.of(tables.drives().drive(type.drive())))
                    .ifPresent(request::head);
        }
        request.drive(tables.drives().drive(type.drive()));
        seat.material().ifPresent(name -> request.material(tables.material(name)));
        StackUp.of(tables, device, joint).engagementMm().ifPresent(request::engagementMm);
        seat.bossOuterMm().ifPresent(request::bossOuterMm);
        if (conditions.assumeCautiously()) {
            request.assumeCautiously();
        }
        return request.build();
    }
}
