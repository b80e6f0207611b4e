package reseat.model;

import java.util.List;
import java.util.Optional;

/**
 * A part.
 *
 * @param id what files, plans and rules name it by
 * @param name the name people use
 * @param kind id of the kind of part
 * @param under parts that are in the way of moving this one
 * @param move how it is moved; empty only for the base
 * @param spareIncludes parts included in its spare unit, which may stay on it
 * @param spare order number; empty if none is known
 * @param hazards ids of hazards that any act on the part brings, besides those of its kind
 * @param inspect what to inspect when it is out; each a sentence
 * @param needs supplies that must be cut before it is moved; empty if not stated, so that {@link
 *     Device#power} computes them
 */
public record Part(
        String id,
        String name,
        String kind,
        List<String> under,
        Optional<Move> move,
        List<String> spareIncludes,
        Optional<String> spare,
        List<String> hazards,
        List<String> inspect,
        Optional<List<String>> needs) {

    public Part {
        under = List.copyOf(under);
        spareIncludes = List.copyOf(spareIncludes);
        hazards = List.copyOf(hazards);
        inspect = List.copyOf(inspect);
        needs = needs.map(List::copyOf);
    }

    /** Creates a part that may be moved under power. */
    public Part(
            String id,
            String name,
            String kind,
            List<String> under,
            Optional<Move> move,
            List<String> spareIncludes,
            Optional<String> spare,
            List<String> hazards,
            List<String> inspect) {
        this(
                id,
                name,
                kind,
                under,
                move,
                spareIncludes,
                spare,
                hazards,
                inspect,
                Optional.of(List.of()));
    }
}
