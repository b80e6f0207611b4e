package reseat.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The state of a unit: which joints are released, and which parts share a place.
 *
 * @param released ids of released joints
 * @param places the parts, place by place; a part named in none shares the place of the base
 */
public record State(Set<String> released, List<Set<String>> places) {

    public State {
        released = Collections.unmodifiableSet(new LinkedHashSet<>(released));
        List<Set<String>> copy = new ArrayList<>();
        for (Set<String> place : places) {
            copy.add(Collections.unmodifiableSet(new LinkedHashSet<>(place)));
        }
        places = Collections.unmodifiableList(copy);
    }

    /** Returns the state of an unopened device. */
    public static State closed() {
        return new State(Set.of(), List.of());
    }
}
