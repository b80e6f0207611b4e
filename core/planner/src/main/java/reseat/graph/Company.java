package reseat.graph;

import java.util.List;

/**
 * The parts with which a part leaves.
 *
 * @param part id of the part
 * @param always parts that come along at its first move, whichever way is taken
 * @param possible all parts that could come along in one move
 * @param ties what ties it to others that could come along
 */
public record Company(String part, List<String> always, List<String> possible, List<Tie> ties) {

    public Company {
        always = List.copyOf(always);
        possible = List.copyOf(possible);
        ties = List.copyOf(ties);
    }
}
