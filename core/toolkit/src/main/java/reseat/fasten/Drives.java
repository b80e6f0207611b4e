package reseat.fasten;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.fasten.DriverFit.Verdict;
import reseat.internal.fasten.Names;

/** Drives of screws, which driver fits which recess, and the torque that they withstand. */
public final class Drives {

    private final FastenerTables tables;

    Drives(FastenerTables tables) {
        this.tables = tables;
    }

    /**
     * Returns the drive that a text denotes. Measured systems (hex, slot, five-lobe, three-wing)
     * take any width in millimetres; numbered ones only the numbers of the table.
     *
     * @param text T5, TR8, IP6, PH00, PZ1, JIS-S0, JIS0, H1.5, SL2.5, 5L0.8, TW1.5
     * @throws FastenerInputException if there is no such drive
     */
    public Drive drive(String text) {
        return find(text)
                .orElseThrow(
                        () ->
                                Names.unknown(
                                        "drive",
                                        text.strip(),
                                        tables.rows(FastenerTable.DRIVES).stream()
                                                .map(row -> row.text("drive"))
                                                .toList()));
    }

    /** Returns the drive that a text denotes, if any. */
    public Optional<Drive> find(String text) {
        return tables.once("drive", text, () -> findOf(text));
    }

    private Optional<Drive> findOf(String text) {
        String wanted = text.strip().replace(',', '.');
        for (TableRow row : tables.rows(FastenerTable.DRIVES)) {
            if (row.text("drive").equalsIgnoreCase(wanted)) {
                return Optional.of(
                        new Drive(
                                row.text("drive"),
                                row.text("system"),
                                row.text("size"),
                                system(row.text("system")).text("title")));
            }
        }
        return spellings().stream()
                .filter(s -> starts(wanted, s.prefix()))
                .map(s -> bySpelling(wanted, s))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private record Spelling(String prefix, TableRow system) {}

    private List<Spelling> spellings() {
        List<Spelling> all = new ArrayList<>();
        for (TableRow row : tables.rows(FastenerTable.DRIVE_SYSTEMS)) {
            for (String prefix : Names.items(row.text("prefix"))) {
                all.add(new Spelling(prefix, row));
            }
            all.add(new Spelling(row.text("system"), row));
        }
        // longest first: "JIS-S" before "JIS"
        all.sort(
                Comparator.comparingInt((Spelling s) -> -s.prefix().length())
                        .thenComparing(Spelling::prefix));
        return all;
    }

    private Optional<Drive> bySpelling(String wanted, Spelling spelling) {
        String size = wanted.substring(spelling.prefix().length()).replaceFirst("^[\\s-]+", "");
        size = size.replaceFirst("\\s*mm$", "");
        String system = spelling.system().text("system");
        String title = spelling.system().text("title");
        for (TableRow row : tables.rows(FastenerTable.DRIVES)) {
            if (row.text("system").equals(system) && sameSize(row.text("size"), size)) {
                return Optional.of(new Drive(row.text("drive"), system, row.text("size"), title));
            }
        }
        if (spelling.system().text("measured").equals("yes") && size.matches("\\d+(\\.\\d+)?")) {
            String prefix = Names.items(spelling.system().text("prefix")).get(0);
            return Double.parseDouble(size) > 0
                    ? Optional.of(new Drive(prefix + size, system, size, title))
                    : Optional.empty();
        }
        return Optional.empty();
    }

    private static boolean starts(String text, String prefix) {
        return text.toLowerCase(Locale.ROOT).startsWith(prefix.toLowerCase(Locale.ROOT));
    }

    private static boolean sameSize(String a, String b) {
        // numbers of cross recesses are text: 00 is not 0
        return a.equals(b) || ((a.contains(".") || b.contains(".")) && rank(a) == rank(b));
    }

    /** Returns how a driver fits a recess. */
    public DriverFit fit(Drive driver, Drive recess) {
        List<TableRow> rows = tables.rows(FastenerTable.DRIVER_FIT);
        for (TableRow row : rows) {
            if (row.text("driver").equals(driver.system())
                    && row.text("recess").equals(recess.system())
                    && relates(row.text("sizes"), driver, recess)) {
                Verdict verdict =
                        Verdict.valueOf(
                                row.text("verdict").toUpperCase(Locale.ROOT).replace('-', '_'));
                return new DriverFit(driver, recess, verdict, row.text("why"), row.source());
            }
        }
        String why =
                driver.system().equals(recess.system())
                        ? rank(driver.size()) > rank(recess.size())
                                ? "the driver is too large"
                                : "the driver is too small to touch"
                        : "the forms differ";
        return new DriverFit(
                driver, recess, Verdict.BLOCKED, why, "no row of driver-fit.csv names the pair");
    }

    private boolean relates(String sizes, Drive driver, Drive recess) {
        double d = rank(driver.size());
        double r = rank(recess.size());
        return switch (sizes) {
            case "same" -> d == r;
            case "smaller-by-one" -> nextSmaller(recess, driver.system()) == d;
            case "smaller" -> d < r && d >= 0.5 * r;
            case "narrower" -> narrower(driver, recess);
            case "any" -> true;
            default -> false;
        };
    }

    private double nextSmaller(Drive recess, String driverSystem) {
        double best = Double.NEGATIVE_INFINITY;
        for (TableRow row : tables.rows(FastenerTable.DRIVES)) {
            if (row.text("system").equals(driverSystem)
                    && rank(row.text("size")) < rank(recess.size())) {
                best = Math.max(best, rank(row.text("size")));
            }
        }
        return best;
    }

    private boolean narrower(Drive driver, Drive recess) {
        OptionalDouble d = acrossMm(driver);
        OptionalDouble r = acrossMm(recess);
        return d.isPresent()
                && r.isPresent()
                && d.getAsDouble() <= r.getAsDouble()
                && d.getAsDouble() >= 0.75 * r.getAsDouble();
    }

    /** Returns the width across of a drive in millimetres; empty if no row gives it. */
    public OptionalDouble acrossMm(Drive drive) {
        if (system(drive.system()).text("measured").equals("yes")) {
            return OptionalDouble.of(Double.parseDouble(drive.size()));
        }
        return tables.rows(FastenerTable.DRIVES).stream()
                .filter(row -> row.text("drive").equals(drive.id()))
                .map(row -> row.number("acrossMm"))
                .flatMapToDouble(OptionalDouble::stream)
                .findFirst();
    }

    /**
     * Returns the least torque that drivers of this size are sold or tested for, in newton metres;
     * empty if unknown.
     */
    public OptionalDouble capacityNm(Drive drive) {
        String plain = drive.system().equals("hexalobular-pin") ? "T" + drive.size() : drive.id();
        return tables.rows(FastenerTable.DRIVE_TORQUES).stream()
                .filter(row -> row.text("drive").equals(plain))
                .mapToDouble(row -> row.required("lowNm"))
                .findFirst();
    }

    /**
     * Returns the drives that a screw of this head and thread is made with, with the standard of
     * each; those from trade practice come last.
     *
     * @param head form of the head; empty for all
     */
    public List<TableRow> byScrew(Optional<String> head, ScrewThread thread) {
        String form = head.map(tables::headForm).orElse("any");
        // a fine pitch changes nothing about the head
        String base = FastenerTables.baseName(thread);
        return tables.rows(FastenerTable.DRIVE_BY_SCREW).stream()
                .filter(row -> row.text("thread").equals(base))
                .filter(
                        row ->
                                form.equals("any")
                                        || row.text("head").equals("any")
                                        || row.text("head").equals(form))
                .toList();
    }

    /** Returns the drivers of the table that fit a recess or appear to, best first. */
    public List<DriverFit> drivers(Drive recess) {
        return tables.rows(FastenerTable.DRIVES).stream()
                .map(row -> fit(drive(row.text("drive")), recess))
                .filter(fit -> fit.verdict() != Verdict.BLOCKED)
                .sorted(Comparator.comparing(DriverFit::verdict))
                .toList();
    }

    private TableRow system(String id) {
        return tables.rows(FastenerTable.DRIVE_SYSTEMS).stream()
                .filter(row -> row.text("system").equals(id))
                .findFirst()
                .orElseThrow(
                        () ->
                                Names.unknown(
                                        "system of drives",
                                        id,
                                        tables.rows(FastenerTable.DRIVE_SYSTEMS).stream()
                                                .map(row -> row.text("system"))
                                                .toList()));
    }

    /** Returns a size for comparison: 000 below 00 below 0 below 1. */
    private static double rank(String size) {
        if (size.matches("0{2,}")) {
            return 1.0 - size.length();
        }
        try {
            return Double.parseDouble(size);
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }
}
