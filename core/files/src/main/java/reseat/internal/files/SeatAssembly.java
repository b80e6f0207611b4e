package reseat.internal.files;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.model.Bond;
import reseat.model.Point;
import reseat.model.Seat;

/** Creates seats and bonds. */
final class SeatAssembly {

    private SeatAssembly() {}

    /**
     * Creates a seat.
     *
     * @param screw id of its screw type
     * @param look the facts of the seat
     */
    static Seat seat(String screw, Look look) {
        Optional<Double> x = look.number("x", Scalars.ScalarType.COORDINATE).map(Look::real);
        Optional<Double> y = look.number("y", Scalars.ScalarType.COORDINATE).map(Look::real);
        List<Seat.Behind> behind =
                look.looks("behind").stream()
                        .filter(each -> each.has("part"))
                        .map(
                                each ->
                                        new Seat.Behind(
                                                each.text("part", ""), each.mm("gap").orElse(0)))
                        .toList();
        return new Seat(
                screw,
                x.flatMap(right -> y.map(up -> new Point(right, up))),
                look.text("form")
                        .flatMap(word -> KindTable.constant(Seat.Form.values(), word))
                        .orElse(Seat.Form.TAPPED),
                look.text("thread"),
                look.text("material"),
                look.mm("clamped"),
                look.mm("threaded"),
                look.mm("depth"),
                look.mm("bossOuter"),
                behind,
                look.nm("torque"),
                look.text("torqueSource", ""),
                look.count("pass"),
                look.count("formedCycles").orElse(0));
    }

    /** Creates a bond. */
    static Bond bond(Look look) {
        List<Bond.Strip> strips =
                look.table("strips").entrySet().stream()
                        .map(
                                each ->
                                        new Bond.Strip(
                                                each.getKey(),
                                                each.getValue().points("path"),
                                                each.getValue().mm("width").orElse(0)))
                        .toList();
        List<Bond.KeepOut> keepOuts =
                look.table("keepOuts").entrySet().stream()
                        .map(
                                each ->
                                        new Bond.KeepOut(
                                                each.getKey(),
                                                each.getValue().text("part", ""),
                                                each.getValue().points("outline")))
                        .toList();
        List<Bond.GivenDepth> depths =
                look.looks("givenDepths").stream()
                        .map(
                                each ->
                                        new Bond.GivenDepth(
                                                each.count("edge").orElse(0),
                                                each.mm("depth").orElse(0)))
                        .toList();
        OptionalDouble thickness = look.mm("thickness");
        return new Bond(
                look.points("edge"),
                strips,
                keepOuts,
                look.mm("margin").orElse(0),
                thickness,
                depths);
    }
}
