package reseat.testkit;

/**
 * The shape of a generated device.
 *
 * @param parts number of parts, the base among them; at least 2
 * @param joints number of joints; at least one per part besides the base
 * @param coverDepth how many later parts lie over a part or joint on average, from 0
 * @param tools number of tools besides the hand; with the postures they make the classes of set-up,
 *     see {@link #setupClasses}
 * @param postures number of postures, at least 1
 * @param alternatives share of joints with a second way, from 0 to 1
 * @param slack share of joints with slack, from 0 to 1
 * @param supplies number of supplies, each with an isolator
 * @param alike how many joints are alike on average, as screws of one cover are; at least 1
 * @param screws share of joints that are screws in seats, from 0 to 1; changes nothing that a plan
 *     depends on
 */
public record DeviceShape(
        int parts,
        int joints,
        double coverDepth,
        int tools,
        int postures,
        double alternatives,
        double slack,
        int supplies,
        double alike,
        double screws) {

    /** A device of the size of a notebook. */
    public static final DeviceShape NOTEBOOK =
            new DeviceShape(35, 110, 1.5, 5, 3, 0.15, 0.15, 1, 3, 0);

    public DeviceShape {
        if (parts < 2 || joints < parts - 1 || postures < 1 || tools < 0 || alike < 1) {
            throw new IllegalArgumentException(
                    "a device needs 2 parts, a joint for each part besides the base, a posture");
        }
    }

    /** A shape whose joints are no screws. */
    public DeviceShape(
            int parts,
            int joints,
            double coverDepth,
            int tools,
            int postures,
            double alternatives,
            double slack,
            int supplies,
            double alike) {
        this(parts, joints, coverDepth, tools, postures, alternatives, slack, supplies, alike, 0);
    }

    /**
     * Returns how many classes of set-up there are: every tool, the hand included, in every
     * posture.
     */
    public int setupClasses() {
        return (tools + 1) * postures;
    }

    /** Returns a copy with another share of screws. */
    public DeviceShape withScrews(double share) {
        return new DeviceShape(
                parts,
                joints,
                coverDepth,
                tools,
                postures,
                alternatives,
                slack,
                supplies,
                alike,
                share);
    }

    /** Returns a copy with other numbers of parts and joints. */
    public DeviceShape sized(int newParts, int newJoints) {
        return new DeviceShape(
                newParts,
                newJoints,
                coverDepth,
                tools,
                postures,
                alternatives,
                slack,
                supplies,
                alike,
                screws);
    }
}
