package reseat.fasten;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import reseat.internal.fasten.Names;
import reseat.internal.fasten.TableReader;
import reseat.internal.fasten.ThreadNames;
import reseat.model.BadInputException;
import reseat.model.Origin;
import reseat.model.Problem;

/**
 * The tables of threads, strengths, heads, drives, materials and units, as data with a source per
 * row. {@link #standard()} returns the included tables; {@link #withRows(Path)} adds a shop's rows.
 * Immutable.
 *
 * <p>Lookups by an unknown name throw {@link FastenerInputException}, which lists the known names.
 */
public final class FastenerTables {

    private static final FastenerTables STANDARD = shipped();

    /** Lookups are cached up to this number; more names than this are not genuine. */
    private static final int KEPT = 4096;

    private final Map<FastenerTable, List<TableRow>> rows;
    private final Map<Asked, Object> answers = new ConcurrentHashMap<>();

    /** A cached lookup. */
    private record Asked(String what, Object name) {}

    private FastenerTables(Map<FastenerTable, List<TableRow>> rows) {
        this.rows = rows;
    }

    /** Returns the tables included in the toolkit. */
    public static FastenerTables standard() {
        return STANDARD;
    }

    /**
     * Returns these tables with more rows. A row whose key exists already replaces that row.
     *
     * @param file a CSV file named as its table, such as {@code materials.csv}, with its header
     *     row; optional columns may be left out
     * @throws BadInputException if a row is invalid; every problem has file, line and column
     * @throws IOException if the file cannot be read
     */
    public FastenerTables withRows(Path file) throws IOException, BadInputException {
        return withRows(file.toString(), Files.readString(file, StandardCharsets.UTF_8));
    }

    /**
     * Returns these tables with more rows.
     *
     * @param file name of the file, whose last component is the name of its table
     * @param text its text
     * @throws BadInputException if a row is invalid
     */
    public FastenerTables withRows(String file, String text) throws BadInputException {
        String name = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
        FastenerTable table = FastenerTable.named(name).orElse(null);
        if (table == null) {
            List<String> known =
                    Arrays.stream(FastenerTable.values()).map(t -> t.title() + ".csv").toList();
            throw new BadInputException(
                    Problem.error(
                            new Origin(file, 0, 0),
                            String.valueOf(Names.unknown("table", name, known).getMessage())));
        }
        Map<String, TableRow> merged = new LinkedHashMap<>();
        rows(table).forEach(row -> merged.put(row.key(), row));
        TableReader.read(table, file, text).forEach(row -> merged.put(row.key(), row));
        Map<FastenerTable, List<TableRow>> all = new EnumMap<>(rows);
        all.put(table, List.copyOf(merged.values()));
        return new FastenerTables(all);
    }

    /** Returns the rows of a table in their order. */
    public List<TableRow> rows(FastenerTable table) {
        return Objects.requireNonNull(rows.get(table));
    }

    /**
     * Returns a thread.
     *
     * @param designation M1.6, M2x0.4, M8x1, S0.8, ST1.8
     * @throws FastenerInputException if there is no such thread, or the pitch does not belong to it
     */
    public ScrewThread thread(String designation) {
        return once("thread", designation, () -> new ThreadNames(this).find(designation));
    }

    /** Returns the property class or grade of a name. */
    public StrengthClass strengthClass(String name) {
        return once("strengthClass", name, () -> strengthClassOf(name));
    }

    private StrengthClass strengthClassOf(String name) {
        TableRow row = named(FastenerTable.CLASSES, "property class", name);
        return new StrengthClass(
                row.text("class"),
                row.text("kind"),
                row.required("rmNominal"),
                row.required("rmMin"),
                row.required("yieldNominal"),
                row.required("yieldMin"),
                row.number("proof"),
                row.number("torsionRatio"),
                row.required("diameterMaxMm"),
                row.source());
    }

    /** Returns the material of a name. */
    public Material material(String name) {
        return once("material", name, () -> materialOf(name));
    }

    private Material materialOf(String name) {
        TableRow row = named(FastenerTable.MATERIALS, "material", name);
        return new Material(
                row.text("material"),
                row.text("group"),
                row.number("rm"),
                row.required("shear"),
                row.number("flexModulus"),
                row.number("coreLow"),
                row.number("coreHigh"),
                row.source());
    }

    /** Returns the friction of a surface. */
    public Friction friction(String surface) {
        return once("friction", surface, () -> frictionOf(surface));
    }

    private Friction frictionOf(String surface) {
        TableRow row = named(FastenerTable.FRICTION, "surface", surface);
        return new Friction(
                row.text("surface"), row.required("low"), row.required("high"), row.source());
    }

    /** Returns the canonical name of a form of head. */
    public String headForm(String head) {
        return named(FastenerTable.HEAD_FORMS, "form of head", head).text("head");
    }

    /** Returns how a form of head bears. */
    public HeadSize.Bearing bearing(String head) {
        return switch (named(FastenerTable.HEAD_FORMS, "form of head", head).text("bearing")) {
            case "flat" -> HeadSize.Bearing.FLAT;
            case "cone" -> HeadSize.Bearing.CONE;
            default -> HeadSize.Bearing.NONE;
        };
    }

    /**
     * Returns the head of a screw by its form and thread.
     *
     * @return empty where no row gives it
     */
    public Optional<HeadSize> headSize(String head, ScrewThread thread) {
        String form = headForm(head);
        return once("headSize", List.of(form, thread), () -> headSizeOf(form, thread));
    }

    private Optional<HeadSize> headSizeOf(String form, ScrewThread thread) {
        return rows(FastenerTable.HEADS).stream()
                .filter(row -> row.text("head").equals(form))
                .filter(row -> row.text("thread").equals(baseName(thread)))
                .findFirst()
                .map(row -> headSize(form, row));
    }

    /**
     * Returns the usual size of a head with a drive: countersunk heads with a hexagon socket (ISO
     * 10642) are wider than those with other recesses (ISO 7046). Empty as {@link #headSize(String,
     * ScrewThread)} is.
     */
    public Optional<HeadSize> headSize(String head, ScrewThread thread, Optional<Drive> drive) {
        String form = headForm(head);
        boolean socket = drive.isPresent() && drive.get().system().equals("hex");
        if (drive.isEmpty() || socket || !form.equals("countersunk")) {
            return headSize(head, thread);
        }
        return rows(FastenerTable.HEADS).stream()
                .filter(row -> row.text("head").equals(form))
                .filter(row -> row.text("standard").equals("ISO 7046"))
                .filter(row -> row.text("thread").equals(baseName(thread)))
                .findFirst()
                .map(row -> headSize(form, row))
                .or(() -> headSize(head, thread));
    }

    private HeadSize headSize(String form, TableRow row) {
        OptionalDouble head = row.number("headMm");
        double bearing =
                row.number("bearingMm")
                        .orElseGet(() -> HeadSize.BEARING_SHARE * row.required("headMm"));
        return new HeadSize(
                form,
                bearing(form),
                bearing(form) == HeadSize.Bearing.CONE ? head.orElse(bearing) : bearing,
                head,
                row.number("heightMm"),
                row.source());
    }

    /** Returns a head by its diameter, in millimetres. */
    public HeadSize headSize(String head, double headMm) {
        if (!(headMm > 0)) {
            throw new FastenerInputException("A head diameter of " + headMm + " mm is impossible.");
        }
        HeadSize.Bearing bearing = bearing(head);
        double outer =
                switch (bearing) {
                    case FLAT -> HeadSize.BEARING_SHARE * headMm;
                    case CONE -> headMm;
                    case NONE -> 0;
                };
        return new HeadSize(
                headForm(head),
                bearing,
                outer,
                OptionalDouble.of(headMm),
                OptionalDouble.empty(),
                "head diameter as given; bearing face " + HeadSize.BEARING_SHARE + " of it");
    }

    /** Returns the medium clearance hole of a diameter in millimetres; empty if no row gives it. */
    public OptionalDouble clearanceHoleMm(double diameterMm) {
        return once(
                "clearanceHole",
                diameterMm,
                () ->
                        rows(FastenerTable.CLEARANCE_HOLES).stream()
                                .filter(
                                        row ->
                                                Math.abs(row.required("diameterMm") - diameterMm)
                                                        < 1e-9)
                                .mapToDouble(row -> row.required("mediumMm"))
                                .findFirst());
    }

    /** Returns a rule of {@link FastenerTable#GUIDELINES}. */
    public Rule rule(String id) {
        TableRow row = named(FastenerTable.GUIDELINES, "rule", id);
        return new Rule(id, row.required("low"), row.required("high"), row.source());
    }

    /** Returns the drives. */
    public Drives drives() {
        return new Drives(this);
    }

    /** Returns the units of torque. */
    public TorqueUnits torqueUnits() {
        return new TorqueUnits(this);
    }

    /** Returns the name without a fine pitch. */
    static String baseName(ScrewThread thread) {
        int x = thread.designation().indexOf('x');
        return x < 0 ? thread.designation() : thread.designation().substring(0, x);
    }

    /** Computes an answer unless it is cached. Exceptions are not cached. */
    @SuppressWarnings("unchecked") // what and name determine the type of the answer
    <T> T once(String what, Object name, Supplier<T> compute) {
        Asked asked = new Asked(what, name);
        Object known = answers.get(asked);
        if (known == null) {
            known = compute.get();
            if (answers.size() < KEPT) {
                answers.put(asked, known);
            }
        }
        return (T) known;
    }

    private TableRow named(FastenerTable table, String what, String name) {
        return once(table.name(), name, () -> find(table, what, name));
    }

    private TableRow find(FastenerTable table, String what, String name) {
        String first = table.columns().get(0).name();
        String wanted = name.strip();
        for (TableRow row : rows(table)) {
            if (row.text(first).equalsIgnoreCase(wanted)
                    || aliases(row).contains(wanted.toLowerCase(Locale.ROOT))) {
                return row;
            }
        }
        throw Names.unknown(
                what, wanted, rows(table).stream().map(row -> row.text(first)).toList());
    }

    private static List<String> aliases(TableRow row) {
        String cell = row.cells().getOrDefault("alias", "");
        return Names.items(cell.toLowerCase(Locale.ROOT));
    }

    private static FastenerTables shipped() {
        Map<FastenerTable, List<TableRow>> all = new EnumMap<>(FastenerTable.class);
        List<String> broken = new ArrayList<>();
        for (FastenerTable table : FastenerTable.values()) {
            String file = table.title() + ".csv";
            try (InputStream in = FastenerTables.class.getResourceAsStream(file)) {
                String text =
                        new String(
                                Objects.requireNonNull(in, file).readAllBytes(),
                                StandardCharsets.UTF_8);
                all.put(table, TableReader.read(table, file, text));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (BadInputException e) {
                broken.add(String.valueOf(e.getMessage()));
            }
        }
        if (!broken.isEmpty()) {
            throw new IllegalStateException(String.join("\n", broken));
        }
        return new FastenerTables(all);
    }
}
