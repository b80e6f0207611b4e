package reseat.internal.fasten;

import java.util.OptionalDouble;
import reseat.fasten.Drive;
import reseat.fasten.FastenerInputException;
import reseat.fasten.FastenerTable;
import reseat.fasten.FastenerTables;
import reseat.fasten.HeadSize;
import reseat.fasten.ScrewThread;
import reseat.text.NumberText;

/** Refuses recesses that are wider than the head, or than a screw without one. */
final class DriveRoom {

    private final FastenerTables tables;
    private final ScrewThread thread;
    private final Drive drive;

    DriveRoom(FastenerTables tables, ScrewThread thread, Drive drive) {
        this.tables = tables;
        this.thread = thread;
        this.drive = drive;
    }

    /**
     * Refuses the drive if it has no room.
     *
     * @param head the head
     * @param given whether it was given; else the widest head known for the thread counts
     */
    void refuse(HeadSize head, boolean given) {
        OptionalDouble across = acrossMm();
        if (across.isEmpty()) {
            return;
        }
        boolean none = head.bearing() == HeadSize.Bearing.NONE;
        double room = none ? thread.diameterMm() : given ? own(head) : widest(head);
        if (across.getAsDouble() >= room) {
            throw new FastenerInputException(
                    drive.id()
                            + " is "
                            + NumberText.mm(across.getAsDouble())
                            + " across and does not fit into "
                            + (none
                                    ? "a screw of "
                                    : given ? "a head of " : "the widest head known for ")
                            + (none || given
                                    ? NumberText.mm(room)
                                    : thread.designation() + ", " + NumberText.mm(room))
                            + ".");
        }
    }

    private static double own(HeadSize head) {
        return head.headMm().orElse(head.bearingMm());
    }

    private double widest(HeadSize head) {
        return tables.rows(FastenerTable.HEADS).stream()
                .filter(row -> row.text("thread").equals(thread.designation()))
                .flatMap(row -> row.number("headMm").stream().boxed())
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(2.5 * own(head));
    }

    /** The width of the recess; of a cross recess the least that any table has for its number. */
    private OptionalDouble acrossMm() {
        if (drive.system().startsWith("cross")) {
            return tables.rows(FastenerTable.DRIVE_BY_SCREW).stream()
                    .filter(row -> row.text("drive").equals(drive.id()))
                    .flatMap(row -> row.number("recessAcrossMm").stream().boxed())
                    .mapToDouble(Double::doubleValue)
                    .min();
        }
        if (drive.system().equals("slot")) {
            return OptionalDouble.empty(); // its size is the width of the blade
        }
        return tables.rows(FastenerTable.DRIVES).stream()
                .filter(row -> row.text("drive").equals(drive.id()))
                .flatMap(row -> row.number("acrossMm").stream().boxed())
                .mapToDouble(Double::doubleValue)
                .findFirst();
    }
}
