package reseat.model;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What a user forbids, requires and permits in a plan. Ids keep the order in which they were given.
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
        return with(0, ids);
    }

    public Rules forbidJoints(Collection<String> ids) {
        return with(1, ids);
    }

    public Rules forbidParts(Collection<String> ids) {
        return with(2, ids);
    }

    public Rules forbidTools(Collection<String> ids) {
        return with(3, ids);
    }

    public Rules requireActs(Collection<String> ids) {
        return with(4, ids);
    }

    public Rules requireJoints(Collection<String> ids) {
        return with(5, ids);
    }

    public Rules requireParts(Collection<String> ids) {
        return with(6, ids);
    }

    public Rules requireTools(Collection<String> ids) {
        return with(7, ids);
    }

    public Rules permitRuin(Collection<String> ids) {
        return with(8, ids);
    }

    /** Returns these rules with more ids in one of their sets. */
    private Rules with(int which, Collection<String> ids) {
        List<Set<String>> all =
                new ArrayList<>(
                        List.of(
                                forbiddenActs,
                                forbiddenJoints,
                                forbiddenParts,
                                forbiddenTools,
                                requiredActs,
                                requiredJoints,
                                requiredParts,
                                requiredTools,
                                permittedRuin));
        Set<String> more = new LinkedHashSet<>(all.get(which));
        more.addAll(ids);
        all.set(which, more);
        return new Rules(
                all.get(0),
                all.get(1),
                all.get(2),
                all.get(3),
                all.get(4),
                all.get(5),
                all.get(6),
                all.get(7),
                all.get(8));
    }

    private static Set<String> copy(Set<String> ids) {
        return Collections.unmodifiableSet(new LinkedHashSet<>(ids));
    }
}
