package reseat.query;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.fasten.FastenerInputException;
import reseat.fasten.FastenerTables;
import reseat.fasten.SeatConditions;
import reseat.fasten.StackUp;
import reseat.fasten.TableRow;
import reseat.fasten.TorqueAdvisor;
import reseat.fasten.TorqueEstimate;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.ScrewType;
import reseat.model.Seat;

/** Creates the rows of screws in their seats. */
final class SeatFacts {

    private final Device device;
    private final FastenerTables tables;

    SeatFacts(Device device, FastenerTables tables) {
        this.device = device;
        this.tables = tables;
    }

    List<ScrewRow> screws() {
        List<ScrewRow> rows = new ArrayList<>();
        for (Joint joint : device.joints().values()) {
            joint.seat().ifPresent(seat -> rows.add(screw(joint, seat)));
        }
        return List.copyOf(rows);
    }

    List<TorqueRow> torques() {
        List<TorqueRow> rows = new ArrayList<>();
        for (Joint joint : device.joints().values()) {
            joint.seat().ifPresent(seat -> rows.add(torque(joint, seat)));
        }
        return List.copyOf(rows);
    }

    private ScrewRow screw(Joint joint, Seat seat) {
        ScrewType type = Objects.requireNonNull(device.screwTypes().get(seat.screw()));
        String pointer = "/joints/" + joint.id();
        Optional<StackUp> lies = Optional.empty();
        List<String> missing = List.of();
        try {
            StackUp known = StackUp.of(tables, device, joint.id());
            lies = Optional.of(known);
            missing = known.missing();
        } catch (FastenerInputException e) {
            missing = List.of(String.valueOf(e.getMessage()));
        }
        List<ClearanceRow> behind = new ArrayList<>();
        lies.ifPresent(
                known ->
                        known.behind()
                                .forEach(
                                        b ->
                                                behind.add(
                                                        new ClearanceRow(
                                                                joint.id(),
                                                                pointer,
                                                                type.id(),
                                                                type.lengthMm(),
                                                                b.part(),
                                                                b.name(),
                                                                b.role(),
                                                                b.clearanceMm()))));
        return new ScrewRow(
                joint.id(),
                pointer,
                joint.name(),
                type.id(),
                type.thread(),
                type.lengthMm(),
                type.head(),
                type.drive(),
                type.finish(),
                type.patch(),
                device.kindOf(joint).captive(),
                joint.holds(),
                joint.site(),
                joint.under(),
                number(seat.at().map(at -> at.xMm())),
                number(seat.at().map(at -> at.yMm())),
                seat.torqueNm(),
                lies.map(StackUp::engagementMm).orElse(OptionalDouble.empty()),
                number(lies.map(StackUp::goodEngagementMm)),
                lies.map(StackUp::protrusionMm).orElse(OptionalDouble.empty()),
                lies.map(StackUp::bottomClearanceMm).orElse(OptionalDouble.empty()),
                lies.map(StackUp::outcome),
                behind,
                missing);
    }

    private TorqueRow torque(Joint joint, Seat seat) {
        TorqueAdvisor advisor = TorqueAdvisor.of(tables);
        Optional<TorqueEstimate> estimate = Optional.empty();
        String noEstimate = "";
        OptionalDouble table = OptionalDouble.empty();
        String from = "";
        try {
            Optional<TableRow> row = advisor.familyRow(device, joint.id());
            if (row.isPresent()) {
                table =
                        OptionalDouble.of(
                                tables.torqueUnits().parse(row.get().text("torque")).nm());
                from = row.get().source();
            }
            estimate =
                    Optional.of(
                            advisor.estimate(
                                    advisor.request(device, joint.id(), SeatConditions.unknown())));
        } catch (FastenerInputException e) {
            noEstimate = String.valueOf(e.getMessage());
        }
        if (seat.torqueNm().isPresent()) {
            from = seat.torqueSource().isEmpty() ? "given by the maker" : seat.torqueSource();
        } else if (table.isEmpty()) {
            from = estimate.map(e -> "an estimate: " + e.governing().kind().words()).orElse("");
        }
        return new TorqueRow(
                joint.id(),
                "/joints/" + joint.id(),
                seat.screw(),
                Objects.requireNonNull(device.screwTypes().get(seat.screw())).thread(),
                seat.material().orElse(""),
                seat.torqueNm(),
                table,
                number(estimate.map(TorqueEstimate::valueNm)),
                number(estimate.map(TorqueEstimate::lowNm)),
                number(estimate.map(TorqueEstimate::highNm)),
                estimate.map(e -> e.governing().kind().words()).orElse(""),
                from,
                noEstimate);
    }

    private static OptionalDouble number(Optional<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }
}
