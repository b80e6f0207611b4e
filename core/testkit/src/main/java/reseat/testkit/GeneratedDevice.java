package reseat.testkit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Move;
import reseat.model.Part;
import reseat.model.ScrewType;
import reseat.model.Seat;
import reseat.model.SetupTable;
import reseat.model.Supply;
import reseat.model.Way;

/**
 * Generates devices of any size, the same for the same shape and seed. Parts are mounted one after
 * the other onto earlier ones and covered by later ones alone, so that taking them off in the
 * reverse order always works and a full teardown exists. Neighbours in that order are neighbours in
 * the device: covers and sites are drawn from nearby parts, as in real devices.
 */
public final class GeneratedDevice {

    private static final String HAND = "hand";
    private static final int NEIGHBOURHOOD = 12;
    private static final int SCREW_TYPES = 3;

    private final DeviceShape shape;
    private final Random random;

    /** A separate random source, so that a device with screws is otherwise the same as without. */
    private final Random screws;

    private final List<String> tools = new ArrayList<>();
    private final List<String> postures = new ArrayList<>();
    private final int[] site;

    private GeneratedDevice(DeviceShape shape, long seed) {
        this.shape = shape;
        // neighbouring seeds of java.util.Random start alike: mix them first
        this.random = new Random(seed * 0x9E3779B97F4A7C15L ^ 0x2545F4914F6CDD1DL);
        this.screws = new Random(seed * 0xD1342543DE82EF95L ^ 0x5DEECE66DL);
        tools.add(HAND);
        for (int k = 1; k <= shape.tools(); k++) {
            tools.add("tool-" + k);
        }
        for (int k = 1; k <= shape.postures(); k++) {
            postures.add("posture-" + k);
        }
        site = new int[shape.parts()];
    }

    /**
     * Generates a device.
     *
     * @param shape its shape
     * @param seed the seed of its random choices
     */
    public static Device of(DeviceShape shape, long seed) {
        GeneratedDevice generator = new GeneratedDevice(shape, seed);
        return Device.build("generated-" + seed, generator::state);
    }

    private void state(Device.Builder facts) {
        facts.base("base").hand(HAND).usualPosture(postures.get(0)).setup(setup());
        facts.add(Kind.plain(Kind.Scope.PART, "part"))
                .add(Kind.plain(Kind.Scope.JOINT, "joint"))
                .add(Kind.plain(Kind.Scope.MANIPULATION, "release"))
                .add(Kind.plain(Kind.Scope.MANIPULATION, "lift"));
        if (shape.screws() > 0) {
            facts.add(Kind.plain(Kind.Scope.JOINT, "screw"));
            for (int k = 1; k <= SCREW_TYPES; k++) {
                facts.add(screwType(k));
            }
        }
        for (int k = 1; k <= shape.supplies(); k++) {
            facts.add(new Supply("supply-" + k, "Supply " + k));
        }
        facts.add(
                new Part(
                        "base",
                        "Base",
                        "part",
                        List.of(),
                        Optional.empty(),
                        List.of(),
                        Optional.empty(),
                        List.of(),
                        List.of()));
        for (int p = 1; p < shape.parts(); p++) {
            site[p] = p == 1 || random.nextInt(100) < 40 ? 0 : earlier(p);
            facts.add(part(p));
        }
        int made = 0;
        for (int p = 1; p < shape.parts(); p++) {
            made += joints(facts, p, made);
        }
    }

    private Part part(int p) {
        Set<String> under = new LinkedHashSet<>();
        covers(p, under);
        Move move =
                new Move(
                        "lift",
                        random.nextInt(100) < 80 ? HAND : any(tools),
                        random.nextInt(100) < 70 ? postures.get(0) : any(postures),
                        1000 + random.nextInt(4000),
                        1000 + random.nextInt(5000),
                        List.of(),
                        List.of());
        return new Part(
                name(p),
                "Part " + p,
                "part",
                List.copyOf(under),
                Optional.of(move),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of());
    }

    /** Adds the joints of a part; returns how many. */
    private int joints(Device.Builder facts, int p, int before) {
        int fair = (int) Math.round((double) shape.joints() * p / (shape.parts() - 1)) - before;
        int wanted = Math.max(1, p == shape.parts() - 1 ? shape.joints() - before : fair);
        int made = 0;
        while (made < wanted) {
            int alike =
                    Math.min(
                            wanted - made,
                            1 + random.nextInt((int) Math.round(2 * shape.alike() - 1)));
            joint(facts, p, made, alike, made == 0);
            made += alike;
        }
        return made;
    }

    private void joint(Device.Builder facts, int p, int first, int alike, boolean toSite) {
        int to = toSite ? site[p] : random.nextBoolean() ? site[p] : earlier(p);
        boolean slack = !toSite && random.nextDouble() < shape.slack();
        Set<String> under = new LinkedHashSet<>();
        covers(p, under);
        Set<String> holds = new LinkedHashSet<>();
        holds.add(name(p));
        if (!slack && random.nextInt(100) < 8 && p > 2) {
            int through = earlier(p);
            if (through != to && through != p) {
                holds.add(name(through));
            }
        }
        holds.add(name(to));
        List<String> needs = new ArrayList<>();
        List<String> cuts = new ArrayList<>();
        int isolator = shape.parts() - 1 - p;
        if (shape.supplies() > 0 && first == 0 && isolator < shape.supplies()) {
            cuts.add("supply-" + (isolator + 1));
        } else if (shape.supplies() > 0
                && random.nextInt(100) < 20
                && p < shape.parts() - shape.supplies()) {
            needs.add("supply-" + (1 + random.nextInt(shape.supplies())));
        }
        Map<String, Way> ways = ways();
        Optional<Seat> seat =
                !slack && screws.nextDouble() < shape.screws()
                        ? Optional.of(seat(1 + screws.nextInt(SCREW_TYPES)))
                        : Optional.empty();
        for (int k = 0; k < alike; k++) {
            String id = name(p) + "-j" + (first + k + 1);
            facts.add(
                    new Joint(
                            id,
                            id,
                            seat.isPresent() ? "screw" : "joint",
                            List.copyOf(holds),
                            List.copyOf(under),
                            slack,
                            needs,
                            k == 0 ? cuts : List.of(),
                            ways,
                            seat,
                            Optional.empty(),
                            1));
        }
    }

    private static ScrewType screwType(int k) {
        return new ScrewType(
                "screw-" + k,
                "M1.6",
                2 + k,
                OptionalDouble.empty(),
                "pan",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                "PH00",
                Optional.empty(),
                "",
                false,
                Optional.empty());
    }

    private static Seat seat(int type) {
        return new Seat(
                "screw-" + type,
                Optional.empty(),
                Seat.Form.TAPPED,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(),
                OptionalDouble.empty(),
                "",
                OptionalInt.empty(),
                0);
    }

    private Map<String, Way> ways() {
        Map<String, Way> ways = new LinkedHashMap<>();
        int count = random.nextDouble() < shape.alternatives() ? 2 : 1;
        for (int k = 1; k <= count; k++) {
            String posture = random.nextInt(100) < 75 ? postures.get(0) : any(postures);
            ways.put(
                    "way-" + k,
                    new Way(
                            "way-" + k,
                            "release",
                            any(tools),
                            posture,
                            1000 + random.nextInt(6000),
                            1000 + random.nextInt(7000),
                            List.of(),
                            List.of(),
                            "",
                            List.of(),
                            List.of()));
        }
        return ways;
    }

    /** Draws later parts that lie over something of part p. */
    private void covers(int p, Set<String> under) {
        double left = shape.coverDepth();
        while (left > 0 && p + 1 < shape.parts()) {
            if (random.nextDouble() < left) {
                int span = Math.min(NEIGHBOURHOOD, shape.parts() - 1 - p);
                under.add(name(p + 1 + random.nextInt(span)));
            }
            left -= 1;
        }
    }

    private int earlier(int p) {
        int span = Math.min(NEIGHBOURHOOD, p - 1);
        return span <= 0 ? 0 : p - 1 - random.nextInt(span);
    }

    private SetupTable setup() {
        Map<String, Map<String, Long>> tool = table(tools, 1440);
        return new SetupTable(tool, table(postures, 1800));
    }

    /** Draws changes between one and two times the least: such a table is always metric. */
    private Map<String, Map<String, Long>> table(List<String> ids, long least) {
        Map<String, Map<String, Long>> table = new LinkedHashMap<>();
        for (String from : ids) {
            Map<String, Long> row = new LinkedHashMap<>();
            for (String to : ids) {
                row.put(to, from.equals(to) ? 0 : least + random.nextInt((int) least));
            }
            table.put(from, row);
        }
        return table;
    }

    private <T> T any(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    private static String name(int p) {
        return p == 0 ? "base" : "p" + p;
    }
}
