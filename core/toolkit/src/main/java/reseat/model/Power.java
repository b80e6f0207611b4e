package reseat.model;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What has to be without power before it is touched: what joints and parts state, else what two
 * rules say. <em>Power first</em>: before anything inside the device is touched, some supplies are
 * cut, one after the other in the order of the file; exempt is what can be done with the device
 * closed, and what is on the way to an isolator of the supply or of one that is cut before it.
 * <em>Work on a cell</em>: whoever moves the part that a supply comes from, or releases a joint
 * that holds it, cuts that supply first. A value that a joint or part states, an empty list too,
 * replaces the rules. Immutable.
 */
public final class Power {

    /** Where a need comes from. */
    public enum Rule {
        /** The file or the kind states it. */
        STATED,
        /** It is inside the device, and the supply is one of those that are cut first. */
        POWER_FIRST,
        /** It is work on the part that the supply comes from. */
        WORK_ON_CELL
    }

    /**
     * A supply that must be cut.
     *
     * @param supply id
     * @param rule where the need comes from
     */
    public record Need(String supply, Rule rule) {}

    private final Device device;
    private final Reach reach;
    private final Set<String> outsideJoints = new LinkedHashSet<>();
    private final Set<String> outsideParts = new LinkedHashSet<>();
    private final Map<String, Reach.OnTheWay> ways = new LinkedHashMap<>();
    private final List<String> first;
    private final Map<String, String> dropped;

    Power(Device device) {
        this.device = device;
        reach = new Reach(device);
        reach.outside(outsideParts, outsideJoints);
        for (String supply : device.supplies().keySet()) {
            ways.put(supply, reach.onTheWay(supply));
        }
        first = cutFirst();
        dropped = Collections.unmodifiableMap(reach.dropped(this, ways));
    }

    private List<String> cutFirst() {
        List<Supply> cuttable =
                device.supplies().values().stream()
                        .filter(supply -> !reach.isolators(supply.id()).isEmpty())
                        .toList();
        List<String> marked = cuttable.stream().filter(Supply::first).map(Supply::id).toList();
        if (!marked.isEmpty()) {
            return marked;
        }
        return cuttable.stream()
                .map(Supply::id)
                .sorted()
                .min((a, b) -> Integer.compare(wayTo(a).size(), wayTo(b).size()))
                .stream()
                .toList();
    }

    private Reach.OnTheWay wayTo(String supply) {
        Reach.OnTheWay way = ways.get(supply);
        if (way == null) {
            throw new IllegalArgumentException(device.id() + " has no supply " + supply);
        }
        return way;
    }

    /**
     * Returns the supplies that are cut before anything inside the device is touched, in this
     * order, whether they can be or not: those that are marked, else the one with the fewest
     * members on its way.
     */
    public List<String> first() {
        return first;
    }

    /** Returns the supplies to which the rules do not apply, each with the reason as a clause. */
    public Map<String, String> dropped() {
        return dropped;
    }

    /** Returns the parts that can be moved with the device closed, in the order of the file. */
    public Set<String> outsideParts() {
        return Collections.unmodifiableSet(outsideParts);
    }

    /** Returns the joints that can be released with the device closed, in the order of the file. */
    public Set<String> outsideJoints() {
        return Collections.unmodifiableSet(outsideJoints);
    }

    /** Returns whether an act can be done with the device closed; prepare acts can. */
    public boolean isOutside(Act act) {
        if (act instanceof Act.Release release) {
            return outsideJoints.contains(release.joint());
        }
        return !(act instanceof Act.MoveParts move) || outsideParts.containsAll(move.parts());
    }

    /** Returns the parts on the way to the isolators of a supply, in the order of the file. */
    public Set<String> partsOnTheWay(String supply) {
        return wayTo(supply).parts();
    }

    /** Returns the joints on the way to the isolators of a supply, those among them. */
    public Set<String> jointsOnTheWay(String supply) {
        return wayTo(supply).joints();
    }

    /** Returns the supplies that must be cut before a joint is released, in the order stated. */
    public List<String> needs(Joint joint) {
        return joint.needs().orElseGet(() -> supplies(implied(joint)));
    }

    /** Returns why which supplies must be cut before a joint is released. */
    public List<Need> why(Joint joint) {
        return joint.needs().map(Power::stated).orElseGet(() -> implied(joint));
    }

    /**
     * Returns the supplies that must be cut before parts are moved together. What they state counts
     * together, and the rules apply unless all of them state something.
     *
     * @param parts ids; one or more
     */
    public List<String> needs(Collection<String> parts) {
        return supplies(why(parts));
    }

    /**
     * Returns why which supplies must be cut before parts are moved together.
     *
     * @param parts ids; one or more
     */
    public List<Need> why(Collection<String> parts) {
        Map<String, Need> needs = new LinkedHashMap<>();
        boolean silent = false;
        for (String part : parts) {
            Optional<List<String>> own = device.part(part).needs();
            silent |= own.isEmpty();
            own.map(Power::stated).orElse(List.of()).forEach(n -> needs.put(n.supply(), n));
        }
        if (silent) {
            implied(parts).forEach(need -> needs.putIfAbsent(need.supply(), need));
        }
        return List.copyOf(needs.values());
    }

    /** Returns what the rules say of a joint, whatever it states. */
    private List<Need> implied(Joint joint) {
        List<Need> needs = new ArrayList<>();
        for (Supply supply : device.supplies().values()) {
            add(
                    supply,
                    id -> jointsOnTheWay(id).contains(joint.id()),
                    outsideJoints.contains(joint.id()),
                    supply.of().filter(joint.holds()::contains).isPresent(),
                    needs);
        }
        return needs;
    }

    /** Returns what the rules say of a move, whatever its parts state. */
    private List<Need> implied(Collection<String> parts) {
        List<Need> needs = new ArrayList<>();
        for (Supply supply : device.supplies().values()) {
            add(
                    supply,
                    id -> parts.stream().anyMatch(partsOnTheWay(id)::contains),
                    outsideParts.containsAll(parts),
                    supply.of().filter(parts::contains).isPresent(),
                    needs);
        }
        return needs;
    }

    private void add(
            Supply supply,
            Predicate<String> onTheWay,
            boolean outside,
            boolean onCell,
            List<Need> needs) {
        if (isDropped(supply.id()) || onTheWay.test(supply.id())) {
            return;
        }
        int rank = first.indexOf(supply.id());
        if (onCell) {
            needs.add(new Need(supply.id(), Rule.WORK_ON_CELL));
        } else if (!outside
                && rank >= 0
                && first.subList(0, rank).stream()
                        .noneMatch(id -> !isDropped(id) && onTheWay.test(id))) {
            needs.add(new Need(supply.id(), Rule.POWER_FIRST));
        }
    }

    // while dropped supplies are still being looked for, the rules apply to all but those found
    private boolean isDropped(String supply) {
        return reach.isDropped(supply);
    }

    private static List<Need> stated(List<String> supplies) {
        return supplies.stream().map(supply -> new Need(supply, Rule.STATED)).toList();
    }

    private static List<String> supplies(List<Need> needs) {
        return needs.stream().map(Need::supply).toList();
    }

    /**
     * Returns the supplies that a rule would have cut before a joint is released but that the
     * device file says need not be; what a kind states is no waiver.
     */
    public List<String> waived(Joint joint) {
        return waived(joint.needs(), kindNeeds(Kind.Scope.JOINT, joint.kind()), implied(joint));
    }

    /** Returns the supplies that a rule would have cut before a part is moved; see the other. */
    public List<String> waived(Part part) {
        return waived(
                part.needs(), kindNeeds(Kind.Scope.PART, part.kind()), implied(List.of(part.id())));
    }

    private Optional<List<String>> kindNeeds(Kind.Scope scope, String id) {
        return Optional.ofNullable(device.kinds(scope).get(id)).flatMap(Kind::needs);
    }

    private static List<String> waived(
            Optional<List<String>> stated, Optional<List<String>> ofKind, List<Need> implied) {
        if (stated.isEmpty() || stated.equals(ofKind)) {
            return List.of();
        }
        return supplies(implied).stream().filter(supply -> !stated.get().contains(supply)).toList();
    }

    /** Returns all supplies that some joint cuts, in the order of the file. */
    public List<String> cuttable() {
        return device.supplies().keySet().stream()
                .filter(supply -> !reach.isolators(supply).isEmpty())
                .toList();
    }

    /** Returns the joints that cut a supply, in the order of the file. */
    public Stream<Joint> isolators(String supply) {
        return reach.isolators(supply).stream();
    }
}
