package reseat.fasteners.check;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import reseat.fasten.Drive;
import reseat.fasten.FastenerTable;
import reseat.fasten.FastenerTables;
import reseat.fasten.ScrewThread;

/** How large recesses are, and which sizes belong to which thread. */
final class Recesses {

    /** How much wider or narrower than the usual ones a recess may be; one step of a series. */
    private static final double WIDER = 1.35;

    private static final double NARROWER = 0.6;

    private final FastenerTables tables;

    Recesses(FastenerTables tables) {
        this.tables = tables;
    }

    /**
     * Returns the least width that a recess takes from its head, in millimetres: that of the drive,
     * corner to corner for a hexagon, or of the smallest recess of its number in the standards.
     */
    OptionalDouble leastAcrossMm(Drive drive) {
        OptionalDouble recess =
                tables.rows(FastenerTable.DRIVE_BY_SCREW).stream()
                        .filter(row -> row.text("drive").equals(drive.id()))
                        .filter(row -> !drive.system().equals("slot"))
                        .flatMapToDouble(row -> row.number("recessAcrossMm").stream())
                        .min();
        if (recess.isPresent() || drive.system().equals("slot")) {
            return recess;
        }
        double corners = drive.system().equals("hex") ? 2 / Math.sqrt(3) : 1;
        OptionalDouble across = widthMm(drive);
        return across.isPresent()
                ? OptionalDouble.of(corners * across.getAsDouble())
                : OptionalDouble.empty();
    }

    /**
     * Returns the drives of the same system that a thread is usual with, if this one is far from
     * all of them; empty where it is near, or where nothing is known.
     */
    Optional<List<String>> unlike(Drive drive, ScrewThread thread) {
        List<Drive> usual =
                tables.drives().byScrew(Optional.empty(), thread).stream()
                        .map(row -> tables.drives().find(row.text("drive")))
                        .flatMap(Optional::stream)
                        .filter(each -> system(each).equals(system(drive)))
                        .toList();
        if (usual.isEmpty()) {
            return Optional.empty();
        }
        boolean far =
                system(drive).equals("cross")
                        ? farByNumber(drive, usual)
                        : farByWidth(drive, usual);
        return far
                ? Optional.of(usual.stream().map(Drive::id).distinct().toList())
                : Optional.empty();
    }

    /** Numbers of cross recesses of all forms are of the same order; one step off is seen. */
    private static boolean farByNumber(Drive drive, List<Drive> usual) {
        int number = number(drive);
        return number > usual.stream().mapToInt(Recesses::number).max().orElse(number) + 1
                || number < usual.stream().mapToInt(Recesses::number).min().orElse(number) - 1;
    }

    private boolean farByWidth(Drive drive, List<Drive> usual) {
        OptionalDouble width = widthMm(drive);
        if (width.isEmpty()) {
            return false;
        }
        DoubleStream.Builder known = DoubleStream.builder();
        usual.forEach(each -> widthMm(each).ifPresent(known));
        double[] widths = known.build().sorted().toArray();
        return widths.length > 0
                && (width.getAsDouble() > WIDER * widths[widths.length - 1]
                        || width.getAsDouble() < NARROWER * widths[0]);
    }

    /** 000, 00, 0, 1, 2 rise by one each. */
    private static int number(Drive drive) {
        String size = drive.size();
        return size.matches("0+") ? 1 - size.length() : (int) Math.round(Double.parseDouble(size));
    }

    private static String system(Drive drive) {
        return drive.system().startsWith("cross")
                ? "cross"
                : drive.system().startsWith("hexalobular") ? "hexalobular" : drive.system();
    }

    private OptionalDouble widthMm(Drive drive) {
        OptionalDouble own = tables.drives().acrossMm(drive);
        if (own.isPresent() || !system(drive).equals("hexalobular")) {
            return own;
        }
        // TR and IP are of the size of T
        return tables.drives()
                .find("T" + drive.size())
                .map(plain -> tables.drives().acrossMm(plain))
                .orElse(OptionalDouble.empty());
    }
}
