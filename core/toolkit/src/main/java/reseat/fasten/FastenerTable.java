package reseat.fasten;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import reseat.internal.fasten.Names;

/**
 * The tables, each a CSV file with the name of the table and a header row. Every row ends with its
 * source and a tag: {@code read}, {@code recomputed}, {@code memory} or {@code practice}; a shop's
 * own value rows may carry {@code shop}.
 */
public enum FastenerTable {
    /** Threads: series, diameter, pitch, limits. */
    THREADS(
            "threads",
            1,
            "thread",
            "series:metric|miniature|old|forming",
            "diameterMm:positive",
            "pitchMm:positive",
            "coarse:yes|no",
            "choice?",
            "tolerance?",
            "pitchDiameterMaxMm:positive?",
            "pitchDiameterMinMm:positive?",
            "majorMaxMm:positive?",
            "majorMinMm:positive?"),
    /** Tolerances by pitch. */
    PITCHES(
            "pitches",
            1,
            "pitchMm:positive",
            "allowanceGUm:positive",
            "majorTolerance6Um:positive",
            "minorTolerance6HUm:positive?"),
    /** Property classes and grades. */
    CLASSES(
            "classes",
            1,
            "class",
            "alias?",
            "kind",
            "rmNominal:positive",
            "rmMin:positive",
            "yieldNominal:positive",
            "yieldMin:positive",
            "proof:positive?",
            "torsionRatio:share?",
            "diameterMaxMm:positive"),
    /** Least breaking torques. */
    BREAKING_TORQUES("breaking-torques", 3, "standard", "thread", "class", "torqueNm:positive"),
    /** Least breaking loads of screws for plastics. */
    BREAKING_LOADS("breaking-loads", 1, "thread", "loadN:positive"),
    /** Clearance holes. */
    CLEARANCE_HOLES("clearance-holes", 1, "diameterMm:positive", "mediumMm:positive"),
    /** Forms of heads. */
    HEAD_FORMS("head-forms", 1, "head", "alias?", "bearing:flat|cone|none", "flatBottom:yes|no"),
    /** Sizes of heads by thread. */
    HEADS(
            "heads",
            3,
            "head",
            "standard",
            "thread",
            "bearingMm:positive?",
            "headMm:positive?",
            "heightMm:positive?"),
    /** Friction by surface. */
    FRICTION("friction", 1, "surface", "alias?", "low:share", "high:share"),
    /** Materials that threads are in. */
    MATERIALS(
            "materials",
            1,
            "material",
            "alias?",
            "group",
            "rm:positive?",
            "shear:positive",
            "flexModulus:positive?",
            "coreLow:share?",
            "coreHigh:share?"),
    /** Engagement by group of material. */
    ENGAGEMENT("engagement", 1, "group", "leastDiameters:positive", "goodDiameters:positive"),
    /** Engagement found by trial, for comparison. */
    ENGAGEMENT_TRIALS(
            "engagement-trials", 3, "material", "rm:positive", "class", "diameters:positive"),
    /** Rules for cases that no standard covers. */
    GUIDELINES("guidelines", 1, "rule", "low:positive", "high:positive"),
    /** Drives and their sizes. */
    DRIVES(
            "drives",
            3,
            "system",
            "size",
            "drive",
            "acrossMm:positive?",
            "withinMm:positive?",
            "flareMm:positive?",
            "alphaDegrees:positive?",
            "betaDegrees:positive?"),
    /** Systems of drives and how they are written. */
    DRIVE_SYSTEMS("drive-systems", 1, "system", "prefix", "title", "measured:yes|no"),
    /** How a driver fits a recess. */
    DRIVER_FIT(
            "driver-fit",
            3,
            "driver",
            "recess",
            "sizes:same|smaller-by-one|smaller|narrower|any",
            "verdict:fits|loose|cams-out|blocked",
            "why"),
    /** Drive by screw. */
    DRIVE_BY_SCREW(
            "drive-by-screw",
            4,
            "standard",
            "head",
            "thread",
            "drive",
            "recessAcrossMm:positive?",
            "recessDepthMm:positive?"),
    /** Torques that drivers and keys withstand. */
    DRIVE_TORQUES("drive-torques", 1, "drive", "lowNm:positive", "highNm:positive"),
    /** Units of torque. */
    TORQUE_UNITS("torque-units", 1, "unit", "alias?", "newtonMetres:positive"),
    /** Torques of a family of devices; empty until rows are added. */
    FAMILY_TORQUES("family-torques", 3, "family", "thread", "material", "torque");

    private final String title;
    private final int keys;

    @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable list of records
    private final List<Column> columns;

    FastenerTable(String title, int keys, String... columns) {
        this.title = title;
        this.keys = keys;
        this.columns =
                Stream.concat(
                                Arrays.stream(columns),
                                Stream.of("source", "tag:read|recomputed|memory|practice|shop"))
                        .map(Column::of)
                        .toList();
    }

    /** Returns the name of the table; its file has this name and the ending {@code .csv}. */
    public String title() {
        return title;
    }

    /** Returns the columns in order; the last two are {@code source} and {@code tag}. */
    public List<Column> columns() {
        return columns;
    }

    /**
     * Returns how many of the first columns form the key: a row with the same key replaces an
     * earlier one.
     */
    public int keys() {
        return keys;
    }

    /** Returns the table of a name, with or without {@code .csv}. */
    public static Optional<FastenerTable> named(String name) {
        String bare = name.endsWith(".csv") ? name.substring(0, name.length() - 4) : name;
        return Arrays.stream(values()).filter(table -> table.title.equals(bare)).findFirst();
    }

    /**
     * A column.
     *
     * @param name its name in the header row
     * @param optional whether a cell may be empty
     * @param kind what its cells hold
     * @param words the allowed words, where the cells hold one of a few
     */
    public record Column(String name, boolean optional, Kind kind, List<String> words) {

        public Column {
            words = List.copyOf(words);
        }

        /** The content of cells. */
        public enum Kind {
            /** Any text. */
            TEXT,
            /** A number above 0. */
            POSITIVE,
            /** A number above 0 and not above 1. */
            SHARE,
            /** One of a few words. */
            WORD
        }

        private static Column of(String spec) {
            boolean optional = spec.endsWith("?");
            String bare = optional ? spec.substring(0, spec.length() - 1) : spec;
            int colon = bare.indexOf(':');
            if (colon < 0) {
                return new Column(bare, optional, Kind.TEXT, List.of());
            }
            String name = bare.substring(0, colon);
            String kind = bare.substring(colon + 1);
            return switch (kind) {
                case "positive" -> new Column(name, optional, Kind.POSITIVE, List.of());
                case "share" -> new Column(name, optional, Kind.SHARE, List.of());
                default ->
                        new Column(name, optional, Kind.WORD, Names.items(kind.replace('|', ',')));
            };
        }
    }
}
