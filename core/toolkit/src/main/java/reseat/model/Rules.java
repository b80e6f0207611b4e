package reseat.model;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * What a user forbids, requires and permits in a plan. Ids keep the order in which they were named.
 *
 * @param forbiddenActs ids of acts that must not occur ({@code release:fan-plug/pull}, {@code
 *     move:lid})
 * @param forbiddenJoints joints that must not be released
 * @param forbiddenParts parts that must not be moved
 * @param forbiddenTools tools that must not be used
 * @param requiredActs ids of acts that must occur
 * @param requiredJoints joints that must be released at the end
 * @param requiredParts parts that must have been moved
 * @param requiredTools tools that must be used at least once
 * @param permittedRuin parts that may be ruined
 */
public record Rules(
        Set<String> forbiddenActs,
        Set<String> forbiddenJoints,
        Set<String> forbiddenParts,
        Set<String> forbiddenTools,
        Set<String> requiredActs,
        Set<String> requiredJoints,
        Set<String> requiredParts,
        Set<String> requiredTools,
        Set<String> permittedRuin) {

    private static final Rules NONE =
            new Rules(
                    Set.of(), Set.of(), Set.of(), Set.of(), Set.of(), Set.of(), Set.of(), Set.of(),
                    Set.of());

    public Rules {
        forbiddenActs = copy(forbiddenActs);
        forbiddenJoints = copy(forbiddenJoints);
        forbiddenParts = copy(forbiddenParts);
        forbiddenTools = copy(forbiddenTools);
        requiredActs = copy(requiredActs);
        requiredJoints = copy(requiredJoints);
        requiredParts = copy(requiredParts);
        requiredTools = copy(requiredTools);
        permittedRuin = copy(permittedRuin);
    }

    /** Returns rules that forbid, require and permit nothing. */
    public static Rules none() {
        return NONE;
    }

    public Rules forbidActs(Collection<String> ids) {
        return new Rules(
                plus(forbiddenActs, ids),
                forbiddenJoints,
                forbiddenParts,
                forbiddenTools,
                requiredActs,
                requiredJoints,
                requiredParts,
                requiredTools,
                permittedRuin);
    }

    public Rules forbidJoints(Collection<String> ids) {
        return new Rules(
                forbiddenActs,
                plus(forbiddenJoints, ids),
                forbiddenParts,
                forbiddenTools,
                requiredActs,
                requiredJoints,
                requiredParts,
                requiredTools,
                permittedRuin);
    }

    public Rules forbidParts(Collection<String> ids) {
        return new Rules(
                forbiddenActs,
                forbiddenJoints,
                plus(forbiddenParts, ids),
                forbiddenTools,
                requiredActs,
                requiredJoints,
                requiredParts,
                requiredTools,
                permittedRuin);
    }

    public Rules forbidTools(Collection<String> ids) {
        return new Rules(
                forbiddenActs,
                forbiddenJoints,
                forbiddenParts,
                plus(forbiddenTools, ids),
                requiredActs,
                requiredJoints,
                requiredParts,
                requiredTools,
                permittedRuin);
    }

    public Rules requireActs(Collection<String> ids) {
        return new Rules(
                forbiddenActs,
                forbiddenJoints,
                forbiddenParts,
                forbiddenTools,
                plus(requiredActs, ids),
                requiredJoints,
                requiredParts,
                requiredTools,
                permittedRuin);
    }

    public Rules requireJoints(Collection<String> ids) {
        return new Rules(
                forbiddenActs,
                forbiddenJoints,
                forbiddenParts,
                forbiddenTools,
                requiredActs,
                plus(requiredJoints, ids),
                requiredParts,
                requiredTools,
                permittedRuin);
    }

    public Rules requireParts(Collection<String> ids) {
        return new Rules(
                forbiddenActs,
                forbiddenJoints,
                forbiddenParts,
                forbiddenTools,
                requiredActs,
                requiredJoints,
                plus(requiredParts, ids),
                requiredTools,
                permittedRuin);
    }

    public Rules requireTools(Collection<String> ids) {
        return new Rules(
                forbiddenActs,
                forbiddenJoints,
                forbiddenParts,
                forbiddenTools,
                requiredActs,
                requiredJoints,
                requiredParts,
                plus(requiredTools, ids),
                permittedRuin);
    }

    public Rules permitRuin(Collection<String> ids) {
        return new Rules(
                forbiddenActs,
                forbiddenJoints,
                forbiddenParts,
                forbiddenTools,
                requiredActs,
                requiredJoints,
                requiredParts,
                requiredTools,
                plus(permittedRuin, ids));
    }

    private static Set<String> plus(Set<String> have, Collection<String> more) {
        Set<String> all = new LinkedHashSet<>(have);
        all.addAll(more);
        return all;
    }

    private static Set<String> copy(Set<String> ids) {
        return Collections.unmodifiableSet(new LinkedHashSet<>(ids));
    }
}
