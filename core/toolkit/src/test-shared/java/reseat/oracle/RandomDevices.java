package reseat.oracle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Move;
import reseat.model.Part;
import reseat.model.Prepare;
import reseat.model.SetupTable;
import reseat.model.Supply;
import reseat.model.Tool;
import reseat.model.Way;

/**
 * Makes small random devices, the same for the same seed: 5 to 7 parts and 7 to 12 joints. Parts
 * are built up on the base one after the other, so that most devices can be taken apart; what comes
 * later covers what came before. Most parts and joints leave what they need to the rules.
 */
final class RandomDevices {

    private static final String HAND = "hand";
    private static final String FLAT = "face-up";

    private final Random random;
    private final int parts;
    private final List<String> tools;
    private final List<String> postures;
    private final int[] carrier;
    private final List<Set<Integer>> under = new ArrayList<>();
    private final List<Joint> joints = new ArrayList<>();
    private final List<String> supplies;

    private RandomDevices(Random random) {
        this.random = random;
        this.parts = 5 + random.nextInt(3);
        this.tools = List.of(HAND, "t5", "ph00", "spudger").subList(0, 2 + random.nextInt(3));
        this.postures = List.of(FLAT, "face-down", "on-edge").subList(0, chance(15) ? 1 : 2 + random.nextInt(2));
        this.carrier = new int[parts];
        this.supplies = List.of("dock", "cell").subList(0, chance(8) ? 0 : chance(70) ? 1 : 2);
    }

    /** Returns the case of a seed. */
    static Case of(long seed) {
        // Neighbouring seeds of java.util.Random begin alike; mix them first.
        Random random = new Random(seed * 0x9E3779B97F4A7C15L ^ 0x5DEECE66DL);
        Device device = new RandomDevices(random).device(seed);
        return new RandomRequests(random, device).request(seed);
    }

    private Device device(long seed) {
        for (int p = 1; p < parts; p++) {
            carrier[p] = p == 1 || chance(45) ? 0 : 1 + random.nextInt(p - 1);
            under.add(new LinkedHashSet<>());
        }
        under.add(new LinkedHashSet<>());
        int wanted = 7 + random.nextInt(6) - supplies.size();
        for (int p = 1; p < parts; p++) {
            mount(p, wanted - joints.size() - (parts - 1 - p));
        }
        while (joints.size() < wanted) {
            extra();
        }
        supplies.forEach(this::isolator);
        covers();
        return Device.build("random-" + seed, this::fill);
    }

    private void fill(Device.Builder facts) {
        facts.base("base").hand(HAND).usualPosture(FLAT).setup(setup());
        tools.forEach(tool -> facts.add(new Tool(tool, tool, Optional.empty(), Optional.empty())));
        RandomKinds.all().forEach(facts::add);
        for (String supply : supplies) {
            Optional<String> of =
                    chance(75) ? Optional.of(id(1 + random.nextInt(parts - 1))) : Optional.empty();
            facts.add(new Supply(supply, supply, of, chance(20)));
        }
        if (chance(15)) {
            facts.add(prepare("shut-down", false));
        }
        if (chance(60)) {
            facts.add(prepare("discharge", true));
        }
        // The base does not always come first, so that no code can count on it.
        List<Integer> order = new ArrayList<>();
        for (int p = 0; p < parts; p++) {
            order.add(random.nextInt(order.size() + 1), p);
        }
        for (int p : order) {
            facts.add(part(p));
        }
        joints.forEach(facts::add);
    }

    private Prepare prepare(String id, boolean onlyInside) {
        return new Prepare(id, id, "", time(), time(), List.of(), onlyInside);
    }

    private Part part(int p) {
        List<String> includes = new ArrayList<>();
        for (int child = p + 1; child < parts; child++) {
            if (p > 0 && carrier[child] == p && chance(25)) {
                includes.add(id(child));
            }
        }
        Optional<Move> move =
                p == 0
                        ? Optional.empty()
                        : Optional.of(
                                new Move(
                                        "lift",
                                        chance(90) ? HAND : tool(),
                                        chance(90) ? FLAT : posture(),
                                        time(),
                                        time(),
                                        List.of(),
                                        List.of()));
        return new Part(
                id(p),
                id(p),
                RandomKinds.part(random),
                under.get(p).stream().map(RandomDevices::id).toList(),
                move,
                includes,
                Optional.empty(),
                List.of(),
                List.of(),
                needs(10));
    }

    /** Returns stated needs, or nothing, so that the rules apply. */
    private Optional<List<String>> needs(int percent) {
        if (!chance(percent)) {
            return Optional.empty();
        }
        return Optional.of(
                supplies.isEmpty() || chance(60)
                        ? List.of()
                        : List.of(supplies.get(random.nextInt(supplies.size()))));
    }

    /**
     * Fixes a part to its carrier: a cable and something rigid, a screw through both and the base,
     * or a few plain joints.
     */
    private void mount(int p, int room) {
        int c = carrier[p];
        boolean cable = chance(40) && room > 1;
        if (c != 0 && chance(35)) {
            add(List.of(p, c, 0), false);
        } else {
            add(chance(80) ? List.of(p, c) : List.of(c, p), false);
        }
        if (room > 2 && chance(25)) {
            twin();
        }
        if (cable) {
            add(List.of(p, chance(60) ? 0 : c), true);
        }
    }

    /** Adds a joint between any two or three parts. */
    private void extra() {
        int a = 1 + random.nextInt(parts - 1);
        int b = random.nextInt(a);
        if (chance(15)) {
            twin();
        } else if (b > 0 && chance(50)) {
            add(List.of(a, b, 0), chance(15));
        } else {
            add(List.of(a, b), chance(40));
        }
    }

    /** Adds a joint that cuts a supply, on one of the later parts rather than the first. */
    private void isolator(String supply) {
        int a = Math.max(1 + random.nextInt(parts - 1), 1 + random.nextInt(parts - 1));
        List<Integer> holds = List.of(a, chance(75) ? 0 : random.nextInt(a));
        boolean slack = chance(60);
        Set<String> hidden = new LinkedHashSet<>();
        for (int cover = a + 1; cover < parts; cover++) {
            if (chance(25)) {
                hidden.add(id(cover));
            }
        }
        if (slack && chance(15)) {
            hidden.add(id(a));
        }
        add(holds, hidden, slack, List.of(supply));
    }

    /** Adds a joint that is the last one again. */
    private void twin() {
        Joint last = joints.get(joints.size() - 1);
        joints.add(
                new Joint(
                        "j" + joints.size(),
                        last.name(),
                        last.kind(),
                        last.holds(),
                        last.under(),
                        last.slack(),
                        last.gives(),
                        last.needs(),
                        last.cuts(),
                        last.ways(),
                        Optional.empty(),
                        Optional.empty(),
                        1));
    }

    private void add(List<Integer> holds, boolean slack) {
        Set<String> hidden = new LinkedHashSet<>();
        int top = holds.stream().mapToInt(Integer::intValue).max().orElseThrow();
        for (int cover = top + 1; cover < parts; cover++) {
            if (chance(22)) {
                hidden.add(id(cover));
            }
        }
        if (slack && chance(55)) {
            hidden.add(id(top)); // a cable plugged in beneath the part that it comes from
        }
        if (!hidden.contains("base") && holds.get(holds.size() - 1) != 0 && chance(12)) {
            hidden.add("base"); // a socket on the underside
        }
        add(holds, hidden, slack, supplies.stream().filter(supply -> chance(3)).toList());
    }

    private void add(List<Integer> holds, Set<String> hidden, boolean slack, List<String> cuts) {
        String kind = RandomKinds.joint(random, slack);
        boolean gives = chance(slack ? 2 : kind.equals("screw") ? 0 : 30);
        Optional<List<String>> needs = needs(cuts.isEmpty() ? 12 : 4);
        String id = "j" + joints.size();
        joints.add(
                new Joint(
                        id,
                        id,
                        kind,
                        holds.stream().map(RandomDevices::id).toList(),
                        List.copyOf(hidden),
                        slack,
                        gives,
                        needs,
                        cuts,
                        ways(gives, kind.equals("screw") ? 0 : 45),
                        Optional.empty(),
                        Optional.empty(),
                        1));
    }

    private Map<String, Way> ways(boolean gives, int forceful) {
        Map<String, Way> ways = new LinkedHashMap<>();
        int count = gives || chance(50) ? 1 : 2 + random.nextInt(2);
        for (int w = 0; w < count; w++) {
            String id = "w" + w;
            List<String> ruins =
                    !gives && chance(6) ? List.of(id(1 + random.nextInt(parts - 1))) : List.of();
            ways.put(
                    id,
                    new Way(
                            id,
                            chance(forceful) ? "pry" : "undo",
                            tool(),
                            chance(45) ? FLAT : posture(),
                            time(),
                            time(),
                            List.of(),
                            ruins,
                            "",
                            List.of(),
                            List.of(),
                            strainedBy()));
        }
        return ways;
    }

    /** Returns stated strain, now and then; else the rule applies. */
    private Optional<List<String>> strainedBy() {
        if (joints.isEmpty() || chance(90)) {
            return Optional.empty();
        }
        return Optional.of(
                chance(40) ? List.of() : List.of("j" + random.nextInt(joints.size())));
    }

    /** States what is in the way of what: later parts of earlier ones, and now and then a ring. */
    private void covers() {
        for (int p = 1; p < parts; p++) {
            for (int cover = p + 1; cover < parts; cover++) {
                if (chance(22)) {
                    under.get(p).add(cover);
                }
            }
            if (p > 1 && chance(5)) {
                under.get(p).add(1 + random.nextInt(p - 1));
            }
        }
    }

    private SetupTable setup() {
        return new SetupTable(
                table(tools, 4_000),
                table(postures, 3_000),
                chance(60) ? 10L * random.nextInt(400) : 0,
                chance(90) ? 10L * random.nextInt(400) : 0);
    }

    /**
     * Makes random changes and shortens each to its cheapest detour, so that they obey the triangle
     * inequality.
     */
    private Map<String, Map<String, Long>> table(List<String> ids, int most) {
        int n = ids.size();
        long[][] ms = new long[n][n];
        boolean symmetric = chance(60);
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                ms[i][k] =
                        i == k
                                ? 0
                                : symmetric && k < i ? ms[k][i] : 10L * random.nextInt(most / 10);
            }
        }
        for (int via = 0; via < n; via++) {
            for (int i = 0; i < n; i++) {
                for (int k = 0; k < n; k++) {
                    ms[i][k] = Math.min(ms[i][k], ms[i][via] + ms[via][k]);
                }
            }
        }
        Map<String, Map<String, Long>> table = new LinkedHashMap<>();
        for (int i = 0; i < n; i++) {
            Map<String, Long> row = new LinkedHashMap<>();
            for (int k = 0; k < n; k++) {
                row.put(ids.get(k), ms[i][k]);
            }
            table.put(ids.get(i), row);
        }
        return table;
    }

    private String tool() {
        return tools.get(random.nextInt(tools.size()));
    }

    private String posture() {
        return postures.get(random.nextInt(postures.size()));
    }

    private long time() {
        return chance(5) ? 0 : 10L * random.nextInt(600);
    }

    private boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }

    private static String id(int p) {
        return p == 0 ? "base" : "p" + p;
    }
}
