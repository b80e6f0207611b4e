package reseat.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The state of a unit: which joints are released, which parts share a place, and which acts before
 * work are done.
 *
 * @param released ids of released joints
 * @param places the parts, place by place; a part named in none shares the place of the base
 * @param prepared ids of prepare acts that have been done
 */
public record State(Set<String> released, List<Set<String>> places, Set<String> prepared) {

    public State {
        released = Collections.unmodifiableSet(new LinkedHashSet<>(released));
        List<Set<String>> copy = new ArrayList<>();
        for (Set<String> place : places) {
            copy.add(Collections.unmodifiableSet(new LinkedHashSet<>(place)));
        }
        places = Collections.unmodifiableList(copy);
        prepared = Collections.unmodifiableSet(new LinkedHashSet<>(prepared));
    }

    /** Creates a state in which no prepare act has been done. */
    public State(Set<String> released, List<Set<String>> places) {
        this(released, places, Set.of());
    }

    /** Returns the state of an unopened device. */
    public static State closed() {
        return new State(Set.of(), List.of());
    }
}
