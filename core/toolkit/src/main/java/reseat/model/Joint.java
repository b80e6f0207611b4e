package reseat.model;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What holds parts together.
 *
 * @param id what files, plans and rules name it by
 * @param name the name people use
 * @param kind id of the kind of joint
 * @param holds two or more parts; the last is its site, the part to which it is made
 * @param under parts that hide it
 * @param slack whether its parts can lie apart while it is still connected
 * @param gives whether it lets go by itself when its parts come apart (spring contacts, a pad that
 *     merely clings); then it has one way, which ruins nothing
 * @param needs supplies that must be cut before it may be released; empty if not stated, so that
 *     {@link Device#power} computes them
 * @param cuts supplies that its release cuts
 * @param ways ways to release it, by id, at least one, in the order of the file
 * @param seat the screw and its seat, for a screw
 * @param bond the geometry of a bond and its keep-outs, if known
 * @param madeCycles how often it has been made, factory included; counts against the kind's rated
 *     cycles
 */
public record Joint(
        String id,
        String name,
        String kind,
        List<String> holds,
        List<String> under,
        boolean slack,
        boolean gives,
        Optional<List<String>> needs,
        List<String> cuts,
        Map<String, Way> ways,
        Optional<Seat> seat,
        Optional<Bond> bond,
        int madeCycles) {

    public Joint {
        holds = List.copyOf(holds);
        under = List.copyOf(under);
        needs = needs.map(List::copyOf);
        cuts = List.copyOf(cuts);
        ways = Ordered.copyOf(ways);
        if (holds.size() < 2) {
            throw new IllegalArgumentException("joint " + id + " must hold two or more parts");
        }
        if (ways.isEmpty()) {
            throw new IllegalArgumentException(
                    "joint " + id + " must have at least one way to release it");
        }
        if (gives && (ways.size() > 1 || !onlyWay(ways).ruins().isEmpty())) {
            throw new IllegalArgumentException(
                    "joint " + id + " gives: it must have one way only, which ruins nothing");
        }
    }

    /** Creates a joint that does not give and states its needs. */
    public Joint(
            String id,
            String name,
            String kind,
            List<String> holds,
            List<String> under,
            boolean slack,
            List<String> needs,
            List<String> cuts,
            Map<String, Way> ways,
            Optional<Seat> seat,
            Optional<Bond> bond,
            int madeCycles) {
        this(
                id,
                name,
                kind,
                holds,
                under,
                slack,
                false,
                Optional.of(needs),
                cuts,
                ways,
                seat,
                bond,
                madeCycles);
    }

    private static Way onlyWay(Map<String, Way> ways) {
        return ways.values().iterator().next();
    }

    /** Returns its first way; the only one of a joint that gives. */
    public Way firstWay() {
        return onlyWay(ways);
    }

    /**
     * Returns the part to which it is made: the one with the boss, the socket, the adhesive bed.
     */
    public String site() {
        return holds.get(holds.size() - 1);
    }

    /**
     * Returns whether it lets go by itself, unless it is released already, when some parts are
     * moved away from the others.
     *
     * @param moved ids of the parts that are moved together
     */
    public boolean letsGo(Collection<String> moved) {
        return gives && leadsOut(moved);
    }

    /**
     * Returns whether it holds some parts to others.
     *
     * @param parts ids
     */
    public boolean leadsOut(Collection<String> parts) {
        return holds.stream().anyMatch(parts::contains) && !parts.containsAll(holds);
    }

    /** Returns whether its release cuts a supply. */
    public boolean isIsolator() {
        return !cuts.isEmpty();
    }
}
