package reseat.internal.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import reseat.given.Toy;
import reseat.model.Device;

/**
 * Devices that are large for the planner: parts mounted one upon the other, each by a screw and by
 * a plug that may be levered off or, somewhat dearer, pulled by hand; some lie under others.
 */
final class Tower {

    private static final List<String> TOOLS = List.of("hand", "t5", "spudger", "heat-mat");

    private Tower() {}

    /** Makes a device with so many parts besides the frame and three joints for two of them. */
    static Device of(int parts, long seed) {
        Random random = new Random(seed);
        List<String> facts = new ArrayList<>();
        for (int p = 0; p < parts; p++) {
            List<String> above = new ArrayList<>();
            for (int k = p + 1; k < Math.min(parts, p + 6); k++) {
                if (random.nextInt(100) < 25) {
                    above.add("p" + k);
                }
            }
            String under = above.isEmpty() ? "" : " under " + String.join(" ", above);
            String posture = random.nextInt(4) == 0 ? " posture face-down" : "";
            facts.add("part p" + p + under + " takes " + time(random) + " 500" + posture);
            String on = p == 0 || random.nextBoolean() ? "frame" : "p" + random.nextInt(p);
            String tool = TOOLS.get(random.nextInt(TOOLS.size()));
            facts.add(
                    "joint s"
                            + p
                            + " holds p"
                            + p
                            + " "
                            + on
                            + under
                            + " takes "
                            + time(random)
                            + " 500 tool "
                            + tool
                            + posture);
            if (p % 2 == 1) {
                facts.add(
                        "joint c"
                                + p
                                + " holds p"
                                + p
                                + " p"
                                + (p - 1)
                                + " tool spudger or hand dearer "
                                + (100 + random.nextInt(400))
                                + (random.nextBoolean() ? " slack" : ""));
            }
        }
        return Toy.of(facts.toArray(String[]::new));
    }

    private static int time(Random random) {
        return 500 + random.nextInt(3000);
    }
}
