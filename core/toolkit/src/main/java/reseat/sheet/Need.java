package reseat.sheet;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/**
 * Something to have ready before the device is opened.
 *
 * @param kind its resolved type
 * @param id id of the tool, screw type, consumable, part or joint; for what safety needs, a word
 *     for it
 * @param name display name; for screws the visible and orderable properties
 * @param quantity how much, greater than zero
 * @param unit the unit it is counted in ("piece", "mm", "ml")
 * @param number order number; empty if none is known
 * @param why why it is needed, in a few words; empty if the kind makes it clear
 * @param text the whole line as it is printed
 */
public record Need(
        Kind kind,
        String id,
        String name,
        BigDecimal quantity,
        String unit,
        Optional<String> number,
        String why,
        String text) {

    public Need {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(number, "number");
    }

    /** The kinds of need, in the order in which they are printed. */
    public enum Kind {
        /** A tool or a bit. */
        TOOL("Tools"),
        /** An instrument to measure with. */
        INSTRUMENT("Measure"),
        /** Heat that is put to the device: its source, temperature and time. */
        HEAT("Heat"),
        /** What to wear. */
        PROTECTION("Wear"),
        /** Ventilation and what to keep away. */
        AIR("Air"),
        /** What to have at hand for a cell that burns, and what to do then. */
        FIRE("Fire"),
        /** What loose ends of supplies and terminals of cells are covered with. */
        INSULATION("Insulate"),
        /** Screws of one type that come out and go back in. */
        SCREWS_OUT("Screws out"),
        /** A consumable that the rebuild uses up. */
        USED_UP("Used up"),
        /** A part that the plan takes off, needed if it is replaced. */
        TARGET("Spares"),
        /** A part that the work destroys, with permission. */
        RUINED("Spares"),
        /** Screws that hold only once, because of a locking patch. */
        NEW_SCREWS("Spares"),
        /** A joint near or beyond the number of times that it may be made. */
        WORN("Cycles");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        /** Returns the label under which it is printed. */
        public String label() {
            return label;
        }
    }
}
