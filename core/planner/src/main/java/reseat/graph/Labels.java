package reseat.graph;

import java.util.List;

/** Words that go with ids. */
final class Labels {

    private Labels() {}

    /** A verb for one or for several: "holds", "hold". */
    static String verb(List<String> ids, String verb) {
        return ids.size() == 1 ? verb + "s" : verb;
    }
}
