package reseat.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Power;

/** The model and the oracle compute the same needs, and the same sets that they come from. */
class PowerAgainstOracleTest {

    private static final int DEVICES = 2_000;

    private int outside;
    private int ruled;
    private int dropped;
    private int circular;
    private int strained;

    @Test
    void agreesOnWhatHasToBeCutBeforeWhat() {
        Map<Long, AssertionError> failures = new TreeMap<>();
        long first = Seeds.first();
        for (long seed = first;
                seed < first + Seeds.devices(DEVICES) && !Seeds.enough(failures);
                seed++) {
            long each = seed;
            Seeds.check(getClass(), seed, this::compare).ifPresent(e -> failures.put(each, e));
        }
        Seeds.report(failures);
        System.out.printf(
                "Power against oracle: %d parts outside, %d needs by rule, %d supplies dropped,"
                        + " %d of them for another's sake, %d strained ways%n",
                outside, ruled, dropped, circular, strained);
        assertTrue(
                Seeds.devices(DEVICES) < DEVICES
                        || (outside > 1_000
                                && ruled > 3_000
                                && dropped > 200
                                && circular > 20
                                && strained > 1_000));
    }

    private void compare(long seed) {
        Device device = RandomDevices.of(seed).device();
        Power power = device.power();
        Masks masks = new Masks(device);
        PowerMasks mine = masks.power;
        assertEquals(ids(mine.outsideParts, masks.partIds), power.outsideParts());
        assertEquals(ids(mine.outsideJoints, masks.jointIds), power.outsideJoints());
        assertEquals(ids(mine.first, masks.supplyIds), new HashSet<>(power.first()));
        assertEquals(ids(mine.dropped, masks.supplyIds), power.dropped().keySet());
        for (int s = 0; s < masks.supplyIds.size(); s++) {
            String supply = masks.supplyIds.get(s);
            assertEquals(ids(mine.wayParts[s], masks.partIds), power.partsOnTheWay(supply));
            assertEquals(ids(mine.wayJoints[s], masks.jointIds), power.jointsOnTheWay(supply));
        }
        for (int j = 0; j < masks.joints; j++) {
            joint(masks, j);
        }
        for (int set = 1; set < 1 << masks.parts; set++) {
            Act.MoveParts move = (Act.MoveParts) masks.moveAct(set);
            assertEquals(
                    ids(mine.ofSet[set], masks.supplyIds),
                    once(power.needs(move.parts())),
                    move::toString);
            assertEquals((set & ~mine.outsideParts) == 0, power.isOutside(move), move::toString);
        }
        outside += power.outsideParts().size();
        dropped += power.dropped().size();
        circular +=
                (int) power.dropped().values().stream().filter(w -> w.contains("another")).count();
    }

    private void joint(Masks masks, int j) {
        Joint joint = masks.device.joint(masks.jointIds.get(j));
        Power power = masks.device.power();
        assertEquals(
                ids(masks.power.ofJoint[j], masks.supplyIds),
                once(power.needs(joint)),
                joint::toString);
        ruled += power.why(joint).stream().anyMatch(n -> n.rule() != Power.Rule.STATED) ? 1 : 0;
        for (Masks.WayFacts way : masks.ways.get(j)) {
            assertEquals(
                    ids(way.strainedBy(), masks.jointIds),
                    once(masks.device.strainedBy(joint, way.way())),
                    joint::toString);
            strained += way.strainedBy() == 0 ? 0 : 1;
        }
    }

    private static Set<String> once(Collection<String> ids) {
        Set<String> set = new HashSet<>(ids);
        assertEquals(set.size(), ids.size(), () -> "named twice: " + ids);
        return set;
    }

    private static Set<String> ids(int mask, List<String> all) {
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < all.size(); i++) {
            if ((mask >> i & 1) != 0) {
                ids.add(all.get(i));
            }
        }
        return ids;
    }
}
