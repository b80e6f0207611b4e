package reseat.oracle;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import reseat.model.Consumable;
import reseat.model.ConsumableUse;
import reseat.model.Device;
import reseat.model.FunctionTest;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Part;
import reseat.model.SetupTable;
import reseat.model.Way;

/** Small random devices with what a rebuild looks at: beds, rests, closings for good, tests. */
public final class RebuildCases {

    private RebuildCases() {}

    /** Returns a device of a seed, the same for the same seed. */
    public static Device of(long seed) {
        return dressed(RandomDevices.of(seed).device(), seed, 25);
    }

    /**
     * Returns a device with some of its joints laid, resting, closing for good, and with tests.
     *
     * @param percent how many joints of a hundred are changed in each of these
     */
    public static Device dressed(Device plain, long seed, int percent) {
        Random random = new Random(seed * 31 + 7);
        return Device.build(
                plain.id(),
                facts -> {
                    facts.base(plain.base()).hand(plain.hand()).usualPosture(plain.usualPosture());
                    facts.setup(setup(plain.setup(), random));
                    plain.tools().values().forEach(facts::add);
                    plain.supplies().values().forEach(facts::add);
                    plain.screwTypes().values().forEach(facts::add);
                    plain.consumables().values().forEach(facts::add);
                    plain.hazards().values().forEach(facts::add);
                    plain.prepares().values().forEach(facts::add);
                    for (Kind.Scope scope : Kind.Scope.values()) {
                        plain.kinds(scope).values().forEach(facts::add);
                    }
                    unregistered(plain).forEach(facts::add);
                    facts.add(new Consumable("spirit", "Spirit", "ml", true));
                    plain.parts().values().forEach(facts::add);
                    List<String> ids = new ArrayList<>(plain.parts().keySet());
                    for (Joint joint : plain.joints().values()) {
                        ids.add(joint.id());
                        Kind known =
                                plain.kinds(Kind.Scope.JOINT)
                                        .getOrDefault(
                                                joint.kind(),
                                                Kind.plain(Kind.Scope.JOINT, joint.kind()));
                        Kind kind = kind(known, joint.id(), random, percent);
                        facts.add(kind);
                        facts.add(joint(joint, kind, random.nextInt(100) < percent));
                    }
                    int tests = random.nextInt(4);
                    for (int t = 0; t < tests; t++) {
                        facts.add(test("test-" + t, ids, random));
                    }
                });
    }

    /** Kinds of parts and manipulations that a device uses without saying what they are. */
    private static Set<Kind> unregistered(Device device) {
        Set<Kind> kinds = new LinkedHashSet<>();
        for (Part part : device.parts().values()) {
            kinds.add(Kind.plain(Kind.Scope.PART, part.kind()));
            part.move().ifPresent(m -> kinds.add(Kind.plain(Kind.Scope.MANIPULATION, m.kind())));
        }
        for (Joint joint : device.joints().values()) {
            joint.ways()
                    .values()
                    .forEach(way -> kinds.add(Kind.plain(Kind.Scope.MANIPULATION, way.kind())));
        }
        kinds.removeIf(kind -> device.kinds(kind.scope()).containsKey(kind.id()));
        return kinds;
    }

    private static SetupTable setup(SetupTable table, Random random) {
        Map<String, Map<String, Long>> tools = new LinkedHashMap<>();
        for (String from : table.tools()) {
            Map<String, Long> row = new LinkedHashMap<>();
            table.tools().forEach(to -> row.put(to, table.toolChangeMs(from, to)));
            tools.put(from, row);
        }
        Map<String, Map<String, Long>> postures = new LinkedHashMap<>();
        for (String from : table.postures()) {
            Map<String, Long> row = new LinkedHashMap<>();
            table.postures().forEach(to -> row.put(to, table.postureChangeMs(from, to)));
            postures.put(from, row);
        }
        long open = random.nextInt(3) == 0 ? 10L * random.nextInt(300) : 0;
        return new SetupTable(tools, postures, table.layAsideMs(), open);
    }

    private static Kind kind(Kind kind, String id, Random random, int percent) {
        return new Kind(
                kind.id() + "-" + id,
                kind.scope(),
                kind.title(),
                kind.verb(),
                kind.restoreVerb(),
                kind.role(),
                kind.tool(),
                kind.posture(),
                kind.time(),
                kind.restoreTime(),
                kind.hazards(),
                kind.handling(),
                kind.consumes(),
                kind.restore(),
                kind.irreversible() || random.nextInt(100) < percent / 2,
                kind.keepHold(),
                kind.magnetic(),
                kind.captive(),
                random.nextInt(100) < percent / 2 ? 1_000L * random.nextInt(400) : kind.dwellMs(),
                kind.ratedCycles(),
                kind.needs(),
                kind.forceful(),
                kind.laid() || random.nextInt(100) < percent,
                kind.flammable(),
                kind.storesCharge(),
                kind.heat(),
                kind.source());
    }

    private static Joint joint(Joint joint, Kind kind, boolean cleaned) {
        Map<String, Way> ways = new LinkedHashMap<>();
        for (Way way : joint.ways().values()) {
            List<ConsumableUse> consumes = new ArrayList<>(way.consumes());
            if (cleaned && kind.laid()) {
                consumes.add(new ConsumableUse("spirit", BigDecimal.ONE, "ml"));
            }
            ways.put(
                    way.id(),
                    new Way(
                            way.id(),
                            way.kind(),
                            way.tool(),
                            way.posture(),
                            way.ms(),
                            way.restoreMs(),
                            consumes,
                            way.ruins(),
                            way.restore(),
                            way.handling(),
                            way.hazards(),
                            way.strainedBy()));
        }
        return new Joint(
                joint.id(),
                joint.name(),
                kind.id(),
                joint.holds(),
                joint.under(),
                joint.slack(),
                joint.gives(),
                joint.needs(),
                joint.cuts(),
                ways,
                joint.seat(),
                joint.bond(),
                joint.madeCycles());
    }

    private static FunctionTest test(String id, List<String> ids, Random random) {
        List<String> of = new ArrayList<>();
        for (int k = 0; k <= random.nextInt(2); k++) {
            String each = ids.get(random.nextInt(ids.size()));
            if (!of.contains(each)) {
                of.add(each);
            }
        }
        boolean leak = random.nextInt(4) == 0;
        boolean docked = random.nextInt(3) == 0;
        return new FunctionTest(
                id,
                "Look",
                of,
                List.of(),
                !leak && random.nextInt(3) > 0,
                docked ? "dock" : FunctionTest.BENCH,
                leak);
    }
}
