package reseat.fasten;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import reseat.fasten.StackUp.Outcome;
import reseat.model.Device;
import reseat.model.Kind;
import reseat.model.ScrewType;
import reseat.model.Seat;
import reseat.text.NumberText;

/**
 * Which screw types a person can mistake for one another, weighted by the consequences.
 *
 * <p>Two types look alike if they do not differ in anything that can be seen or felt: the thread
 * diameter by less than 0.3 mm, the length by no more than a threshold, the head diameter by no
 * more than another, the same side of flat or cone, the same bit, the same finish. The weight of a
 * pair is the worst that either screw does in a seat of the other.
 *
 * @param types ids of the screw types compared, in the order of the device file
 * @param pairs every pair of types that look alike, the heaviest first
 */
public record LookAlikes(List<String> types, List<Pair> pairs) {

    private static final double DIAMETER_SEEN_MM = 0.3;

    private static final double PITCH_SEEN = 1.8;

    public LookAlikes {
        types = List.copyOf(types);
        pairs = List.copyOf(pairs);
    }

    /**
     * Two types that look alike.
     *
     * @param one id of the first, which comes first in the device file
     * @param other id of the second
     * @param differences what differs, though not visibly
     * @param weight 0 harmless to 6 a pierced cell; see {@link #weight}
     * @param worst the worst swap; empty if neither starts in a seat of the other
     */
    public record Pair(
            String one,
            String other,
            List<String> differences,
            int weight,
            Optional<StackUp> worst) {

        /** Weight from which a pair is dangerous to confuse. */
        public static final int DANGEROUS = 2;

        public Pair {
            differences = List.copyOf(differences);
        }

        /** Returns whether the two must not share a tray compartment. */
        public boolean dangerous() {
            return weight >= DANGEROUS;
        }
    }

    /**
     * The smallest differences that a person sees without measuring.
     *
     * @param lengthMm difference of length in millimetres
     * @param headMm difference of head diameter in millimetres
     */
    public record Eye(double lengthMm, double headMm) {

        public Eye {
            if (!(lengthMm >= 0) || !(headMm >= 0)) {
                throw new FastenerInputException(
                        "A threshold must be 0 or more: " + lengthMm + ", " + headMm + ".");
            }
        }

        /** Returns the thresholds of the table {@link FastenerTable#GUIDELINES}. */
        public static Eye of(FastenerTables tables) {
            return new Eye(tables.rule("length-seen-mm").low(), tables.rule("head-seen-mm").low());
        }
    }

    /** Returns the matrix of all screw types that sit in a seat of the device. */
    public static LookAlikes of(FastenerTables tables, Device device) {
        return of(tables, device, device.joints().keySet(), Eye.of(tables));
    }

    /**
     * Returns the matrix of the screws of some joints, such as those that a plan takes out.
     *
     * @param tables tables to look up threads in
     * @param joints ids of joints; those without a seat are passed over
     * @param eye what a person sees
     * @throws IllegalArgumentException if a joint does not exist
     * @throws FastenerInputException if a thread, drive or material is not known
     */
    public static LookAlikes of(
            FastenerTables tables, Device device, Collection<String> joints, Eye eye) {
        Map<String, List<String>> seats = seatsByType(device, joints);
        List<String> types =
                device.screwTypes().keySet().stream().filter(seats::containsKey).toList();
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < types.size(); i++) {
            for (int j = i + 1; j < types.size(); j++) {
                ScrewType a = type(device, types.get(i));
                ScrewType b = type(device, types.get(j));
                if (visible(tables, a, b, eye).isEmpty()) {
                    pairs.add(pair(tables, device, a, b, seats));
                }
            }
        }
        pairs.sort((a, b) -> Integer.compare(b.weight(), a.weight()));
        return new LookAlikes(types, pairs);
    }

    /** Returns the pair of two types, in either order, if they look alike. */
    public Optional<Pair> pair(String one, String other) {
        return pairs.stream()
                .filter(
                        p ->
                                (p.one().equals(one) && p.other().equals(other))
                                        || (p.one().equals(other) && p.other().equals(one)))
                .findFirst();
    }

    /**
     * Returns the weight of an outcome: 0 fits or does not start, 1 cannot be determined, 2 loose,
     * 3 strips or bottoms, 4 touches, 5 pierces; one more where what is touched or pierced is a
     * cell.
     */
    public static int weight(StackUp swap) {
        boolean cell =
                swap.behind().stream()
                        .anyMatch(
                                b ->
                                        b.clearanceMm() <= 1e-9
                                                && b.role().equals(Optional.of(Kind.Role.CELL)));
        return switch (swap.outcome()) {
            case NO_ENTRY, FITS -> 0;
            case UNKNOWN -> 1;
            case LOOSE -> 2;
            case STRIPS, BOTTOMS -> 3;
            case TOUCHES -> cell ? 5 : 4;
            case PIERCES -> cell ? 6 : 5;
        };
    }

    /**
     * Returns the visible differences between two screws; empty if they look alike.
     *
     * @throws FastenerInputException if a thread, head or drive is not known
     */
    public static List<String> visible(FastenerTables tables, ScrewType a, ScrewType b, Eye eye) {
        List<String> seen = new ArrayList<>();
        ScrewThread first = tables.thread(a.thread());
        ScrewThread second = tables.thread(b.thread());
        double pitches = first.pitchMm() / second.pitchMm();
        // 2.5 - 2.2 is a little less than 0.3 in binary numbers
        if (Math.abs(first.diameterMm() - second.diameterMm()) >= DIAMETER_SEEN_MM - 1e-9
                || pitches >= PITCH_SEEN
                || pitches <= 1 / PITCH_SEEN) {
            seen.add("thread " + a.thread() + " / " + b.thread());
        }
        if (Math.abs(a.lengthMm() - b.lengthMm()) > eye.lengthMm() + 1e-9) {
            seen.add("length " + plain(a.lengthMm()) + " / " + plain(b.lengthMm()) + " mm");
        }
        if (tables.bearing(a.head()) != tables.bearing(b.head())) {
            seen.add("head " + a.head() + " / " + b.head());
        }
        if (a.headDiameterMm().isPresent()
                && b.headDiameterMm().isPresent()
                && Math.abs(a.headDiameterMm().getAsDouble() - b.headDiameterMm().getAsDouble())
                        > eye.headMm() + 1e-9) {
            seen.add(
                    "head diameter "
                            + plain(a.headDiameterMm().getAsDouble())
                            + " / "
                            + plain(b.headDiameterMm().getAsDouble())
                            + " mm");
        }
        Drive one = tables.drives().drive(a.drive());
        Drive other = tables.drives().drive(b.drive());
        // cross recesses of another system look the same; another bit size is felt
        boolean crosses = one.system().startsWith("cross") && other.system().startsWith("cross");
        if (!one.size().equals(other.size())
                || (!one.system().equals(other.system()) && !crosses)) {
            seen.add("drive " + one.id() + " / " + other.id());
        }
        if (!a.finish().isEmpty()
                && !b.finish().isEmpty()
                && !a.finish().equalsIgnoreCase(b.finish())) {
            seen.add("finish " + a.finish() + " / " + b.finish());
        }
        return List.copyOf(seen);
    }

    private static Pair pair(
            FastenerTables tables,
            Device device,
            ScrewType a,
            ScrewType b,
            Map<String, List<String>> seats) {
        List<StackUp> swaps = new ArrayList<>();
        for (String joint : Objects.requireNonNull(seats.get(a.id()))) {
            swaps.add(StackUp.of(tables, device, joint, b));
        }
        for (String joint : Objects.requireNonNull(seats.get(b.id()))) {
            swaps.add(StackUp.of(tables, device, joint, a));
        }
        StackUp worst = swaps.get(0);
        for (StackUp swap : swaps) {
            if (weight(swap) > weight(worst)) {
                worst = swap;
            }
        }
        boolean starts = worst.outcome() != Outcome.NO_ENTRY;
        return new Pair(
                a.id(),
                b.id(),
                differences(a, b),
                weight(worst),
                starts ? Optional.of(worst) : Optional.empty());
    }

    private static List<String> differences(ScrewType a, ScrewType b) {
        List<String> all = new ArrayList<>();
        add(all, "thread", a.thread(), b.thread());
        add(all, "length", plain(a.lengthMm()) + " mm", plain(b.lengthMm()) + " mm");
        add(all, "head", a.head(), b.head());
        add(all, "drive", a.drive(), b.drive());
        add(
                all,
                "class",
                a.strengthClass().orElse("not stated"),
                b.strengthClass().orElse("not stated"));
        add(all, "patch", a.patch() ? "yes" : "no", b.patch() ? "yes" : "no");
        return all;
    }

    private static void add(List<String> all, String what, String one, String other) {
        if (!one.equals(other)) {
            all.add(what + " " + one + " / " + other);
        }
    }

    private static Map<String, List<String>> seatsByType(Device device, Collection<String> joints) {
        Map<String, List<String>> seats = new LinkedHashMap<>();
        for (String joint : joints) {
            Optional<Seat> seat = device.joint(joint).seat();
            seat.ifPresent(
                    s -> seats.computeIfAbsent(s.screw(), t -> new ArrayList<>()).add(joint));
        }
        return seats;
    }

    private static ScrewType type(Device device, String id) {
        return Objects.requireNonNull(device.screwTypes().get(id));
    }

    private static String plain(double number) {
        return NumberText.figures(number, 6);
    }
}
