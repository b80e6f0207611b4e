package reseat.internal.fasten;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import reseat.fasten.FastenerInputException;
import reseat.fasten.FastenerTable;
import reseat.fasten.FastenerTables;
import reseat.fasten.ScrewThread;
import reseat.fasten.ScrewThread.HoleLimits;
import reseat.fasten.ScrewThread.ScrewLimits;
import reseat.fasten.ScrewThread.Series;
import reseat.fasten.TableRow;
import reseat.text.ListText;
import reseat.text.NumberText;

/** Finds the thread that a designation denotes. */
public final class ThreadNames {

    private static final Pattern DESIGNATION =
            Pattern.compile(
                    "(ST|M|S)\\s?(\\d+(?:[.,]\\d+)?)(?:\\s?[x×*-]\\s?(\\d*[.,]?\\d+))?(?:-6[gh])?",
                    Pattern.CASE_INSENSITIVE);

    private final FastenerTables tables;
    private final List<TableRow> rows;

    /** Creates a lookup over the rows of tables. */
    public ThreadNames(FastenerTables tables) {
        this.tables = tables;
        this.rows = tables.rows(FastenerTable.THREADS);
    }

    /** Returns whether a text has the shape of a designation, known or not. */
    public static boolean looksLikeOne(String text) {
        return DESIGNATION.matcher(text.strip()).matches();
    }

    /** Returns the thread, or throws an exception that lists the known ones. */
    public ScrewThread find(String text) {
        Matcher m = DESIGNATION.matcher(text.strip());
        if (!m.matches()) {
            throw new FastenerInputException(
                    "\""
                            + text
                            + "\" is not a thread; expected one such as M1.6, M2x0.4,"
                            + " S0.8 or ST1.8.");
        }
        String letter = m.group(1).toUpperCase(Locale.ROOT);
        double diameter = number(m.group(2));
        List<TableRow> same =
                rows.stream()
                        .filter(row -> letter(row).equals(letter))
                        .filter(row -> Math.abs(row.required("diameterMm") - diameter) < 1e-9)
                        .toList();
        if (same.isEmpty()) {
            throw unknownSize(text, letter, diameter);
        }
        if (m.group(3) == null) {
            return same.stream()
                    .filter(ThreadNames::coarse)
                    .findFirst()
                    .map(this::thread)
                    .orElseThrow(
                            () ->
                                    new FastenerInputException(
                                            "\""
                                                    + text
                                                    + "\" has no coarse pitch; known: "
                                                    + pitches(same)
                                                    + "."));
        }
        double pitch = number(m.group(3));
        Optional<TableRow> row =
                same.stream()
                        .filter(r -> Math.abs(r.required("pitchMm") - pitch) < 1e-9)
                        .findFirst();
        return row.map(this::thread)
                .orElseThrow(
                        () ->
                                new FastenerInputException(
                                        "The pitch "
                                                + plain(pitch)
                                                + " mm does not belong to "
                                                + letter
                                                + plain(diameter)
                                                + ". Known pitches: "
                                                + pitches(same)
                                                + "."));
    }

    private ScrewThread thread(TableRow row) {
        Series series = Series.valueOf(row.text("series").toUpperCase(Locale.ROOT));
        double d = row.required("diameterMm");
        double p = row.required("pitchMm");
        String name = row.text("thread");
        Optional<ScrewLimits> limits = Optional.empty();
        Optional<HoleLimits> hole = Optional.empty();
        if (series.metricProfile()) {
            Optional<ThreadTolerance> tolerance =
                    ThreadTolerance.of(d, p, tables.rows(FastenerTable.PITCHES));
            limits = tolerance.map(t -> t.screw(d > 1.4));
            hole = tolerance.flatMap(ThreadTolerance::hole);
        }
        if (row.number("pitchDiameterMinMm").isPresent()) {
            limits =
                    Optional.of(
                            new ScrewLimits(
                                    row.required("majorMaxMm"),
                                    row.required("majorMinMm"),
                                    row.required("pitchDiameterMaxMm"),
                                    row.required("pitchDiameterMinMm")));
        }
        double area =
                series == Series.FORMING
                        ? breakingLoad(name) / tables.strengthClass("hardened").rmMin()
                        : 0;
        return new ScrewThread(name, series, d, p, coarse(row), limits, hole, area, row.source());
    }

    private double breakingLoad(String name) {
        return tables.rows(FastenerTable.BREAKING_LOADS).stream()
                .filter(row -> sameSize(row.text("thread"), name))
                .findFirst()
                .map(row -> row.required("loadN"))
                .orElseThrow(
                        () ->
                                new FastenerInputException(
                                        "No breaking load is known for the forming screw "
                                                + name
                                                + "; add a row to breaking-loads.csv."));
    }

    private static boolean sameSize(String a, String b) {
        return Math.abs(number(a.substring(2)) - number(b.substring(2))) < 1e-9;
    }

    private FastenerInputException unknownSize(String text, String letter, double diameter) {
        List<String> known = new ArrayList<>();
        String below = "";
        String above = "";
        for (TableRow row : sorted(letter)) {
            if (coarse(row)) {
                known.add(row.text("thread"));
                if (row.required("diameterMm") < diameter) {
                    below = row.text("thread");
                } else if (above.isEmpty()) {
                    above = row.text("thread");
                }
            }
        }
        List<String> near = Stream.of(below, above).filter(name -> !name.isEmpty()).toList();
        return new FastenerInputException(
                "There is no thread \""
                        + text.strip()
                        + "\". Nearest: "
                        + ListText.and(near)
                        + ". Known: "
                        + Names.list(known)
                        + ".");
    }

    private List<TableRow> sorted(String letter) {
        return rows.stream()
                .filter(row -> letter(row).equals(letter))
                .sorted(Comparator.comparingDouble(row -> row.required("diameterMm")))
                .toList();
    }

    private static String letter(TableRow row) {
        return switch (row.text("series")) {
            case "miniature" -> "S";
            case "forming" -> "ST";
            default -> "M";
        };
    }

    private static boolean coarse(TableRow row) {
        return row.text("coarse").equals("yes");
    }

    private static String pitches(List<TableRow> same) {
        return String.join(
                ", ",
                same.stream()
                        .map(
                                row ->
                                        plain(row.required("pitchMm"))
                                                + (coarse(row) ? " (coarse)" : ""))
                        .toList());
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace(',', '.'));
    }

    private static String plain(double number) {
        return NumberText.figures(number, 6);
    }
}
