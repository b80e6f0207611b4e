package reseat.fasten;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import reseat.internal.fasten.Names;

/**
 * The units of torque that shops use. Factors are exact; they follow from lbf = 4.4482216152605 N,
 * kgf = 9.80665 N, in = 0.0254 m and ft = 0.3048 m (NIST SP 811).
 */
public final class TorqueUnits {

    private static final Pattern TORQUE =
            Pattern.compile(
                    "([+-]?[0-9]+(?:[.,][0-9]+)?(?:[eE][+-]?[0-9]{1,2}(?![0-9]))?)\\s*(.*)");

    /** Three digits after a comma, and neither a lone zero nor four digits before it. */
    private static final Pattern THOUSANDS = Pattern.compile("[+-]?[1-9][0-9]{0,2},[0-9]{3}");

    private final List<TableRow> rows;

    TorqueUnits(FastenerTables tables) {
        this.rows = tables.rows(FastenerTable.TORQUE_UNITS);
    }

    /** Returns the names of the units, newton metre first. */
    public List<String> names() {
        return rows.stream().map(row -> row.text("unit")).toList();
    }

    /**
     * Reads a torque such as {@code 0.06 N·m}, {@code 0.6 kgf-cm} or {@code 8 ozf in}. A dot, a
     * dash, an asterisk or a blank may stand for the middle dot, and a comma for the decimal point.
     *
     * @throws FastenerInputException if the unit is missing or unknown, the amount is not above 0,
     *     or its comma could also separate thousands
     */
    public Torque parse(String text) {
        Matcher m = TORQUE.matcher(text.strip());
        if (!m.matches()) {
            throw new FastenerInputException(
                    "\""
                            + text
                            + "\" is not a torque; expected a number with a unit, such"
                            + " as 0.06 N·m.");
        }
        if (m.group(2).isBlank()) {
            throw new FastenerInputException(
                    "The torque \""
                            + text.strip()
                            + "\" has no unit. Known: "
                            + Names.list(names())
                            + ".");
        }
        if (THOUSANDS.matcher(m.group(1)).matches()) {
            throw new FastenerInputException(
                    "The torque \""
                            + text.strip()
                            + "\" is ambiguous: the comma may separate thousands or mark decimals."
                            + " Write the number without it, or with a point.");
        }
        BigDecimal amount = new BigDecimal(m.group(1).replace(',', '.'));
        if (amount.signum() <= 0) {
            throw new FastenerInputException("The torque \"" + text.strip() + "\" is not above 0.");
        }
        return new Torque(amount, unit(m.group(2)));
    }

    /**
     * Returns a unit by its name or an alternative spelling.
     *
     * @throws FastenerInputException if there is none
     */
    public TorqueUnit unit(String name) {
        String wanted = dotted(name);
        return find(wanted, false)
                .or(() -> find(wanted, true))
                .orElseThrow(() -> Names.unknown("unit of torque", name.strip(), names()));
    }

    private Optional<TorqueUnit> find(String wanted, boolean loosely) {
        for (TableRow row : rows) {
            for (String spelling : Names.items(row.text("unit") + "," + row.text("alias"))) {
                String known = dotted(spelling);
                // a prefix must keep its case: mN·m is not MN·m
                boolean same =
                        loosely
                                ? known.equalsIgnoreCase(wanted)
                                        && known.length() > 0
                                        && !siPrefixed(wanted)
                                : known.equals(wanted);
                if (same) {
                    return Optional.of(
                            new TorqueUnit(
                                    row.text("unit"),
                                    new BigDecimal(row.text("newtonMetres")),
                                    row.source()));
                }
            }
        }
        return Optional.empty();
    }

    private static boolean siPrefixed(String unit) {
        String low = unit.toLowerCase(Locale.ROOT);
        return low.contains("n·")
                || low.endsWith("nm")
                || low.endsWith("ncm")
                || low.endsWith("nmm");
    }

    private static String dotted(String name) {
        return name.strip().replaceAll("\\s*[.\\-*·⋅∙\\s]\\s*", "·");
    }
}
