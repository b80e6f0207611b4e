package reseat.fasten;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import reseat.internal.fasten.Colouring;
import reseat.model.Device;
import reseat.model.Seat;

/**
 * The fewest tray compartments such that no two screws that are dangerous to confuse share one.
 * Compartments are numbered in the order in which their first screws come out.
 *
 * <p>This is a colouring of the graph of dangerous pairs, solved exactly by branch and bound. The
 * proof is a set of types no two of which may share a compartment or, if no such set is large
 * enough, an exhausted search for one compartment less.
 *
 * @param apart the largest set found of screw types of which each must lie apart from each
 * @param proved whether no plan with fewer compartments exists; false only where the search was cut
 *     short
 * @param proof the reason, as a sentence
 */
public record TrayPlan(
        List<Compartment> compartments, List<String> apart, boolean proved, String proof) {

    /** Number of states after which the search is stopped. */
    public static final long EFFORT = 20_000_000L;

    public TrayPlan {
        compartments = List.copyOf(compartments);
        apart = List.copyOf(apart);
    }

    /**
     * A compartment.
     *
     * @param number number, counted from 1
     * @param content its contents, in the order in which they come out
     */
    public record Compartment(int number, List<Lot> content) {
        public Compartment {
            content = List.copyOf(content);
        }
    }

    /**
     * Screws of one type.
     *
     * @param screw id of the screw type
     * @param joints the joints they come out of, in order
     */
    public record Lot(String screw, List<String> joints) {
        public Lot {
            joints = List.copyOf(joints);
        }
    }

    /**
     * Returns the trays for screws that come out in a given order.
     *
     * @param joints ids of joints in the order of their release; those without a seat are passed
     *     over
     * @param lookAlikes which screws can be confused
     * @throws IllegalArgumentException if a joint does not exist
     */
    public static TrayPlan of(Device device, List<String> joints, LookAlikes lookAlikes) {
        Map<String, List<String>> byType = new LinkedHashMap<>();
        for (String joint : new LinkedHashSet<>(joints)) {
            device.joint(joint)
                    .seat()
                    .map(Seat::screw)
                    .ifPresent(
                            type ->
                                    byType.computeIfAbsent(type, t -> new ArrayList<>())
                                            .add(joint));
        }
        List<String> types = List.copyOf(byType.keySet());
        boolean[][] apart = new boolean[types.size()][types.size()];
        for (int i = 0; i < types.size(); i++) {
            for (int j = 0; j < types.size(); j++) {
                apart[i][j] =
                        i != j
                                && lookAlikes
                                        .pair(types.get(i), types.get(j))
                                        .filter(LookAlikes.Pair::dangerous)
                                        .isPresent();
            }
        }
        Colouring colouring = Colouring.fewest(apart, EFFORT);
        Map<Integer, List<Lot>> lots = new LinkedHashMap<>();
        for (int i = 0; i < types.size(); i++) {
            lots.computeIfAbsent(colouring.colours().get(i), c -> new ArrayList<>())
                    .add(new Lot(types.get(i), byType.getOrDefault(types.get(i), List.of())));
        }
        List<Compartment> compartments = new ArrayList<>();
        lots.values()
                .forEach(
                        content ->
                                compartments.add(
                                        new Compartment(compartments.size() + 1, content)));
        Set<String> clique = new LinkedHashSet<>();
        colouring.clique().forEach(i -> clique.add(types.get(i)));
        return new TrayPlan(
                compartments,
                List.copyOf(clique),
                colouring.proved(),
                proof(compartments.size(), List.copyOf(clique), colouring));
    }

    private static String proof(int count, List<String> clique, Colouring colouring) {
        if (count <= 1) {
            return count == 0
                    ? "No screw comes out."
                    : "No two of these screws are dangerous to confuse.";
        }
        if (clique.size() == count) {
            return "Fewer compartments are impossible: none of "
                    + String.join(", ", clique)
                    + " may share one with another.";
        }
        return colouring.proved()
                ? "Fewer compartments are impossible: every way to use "
                        + (count - 1)
                        + " was tried ("
                        + colouring.states()
                        + " states)."
                : "Fewer compartments may be possible: the search was stopped after "
                        + colouring.states()
                        + " states.";
    }
}
