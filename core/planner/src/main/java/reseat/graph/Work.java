package reseat.graph;

import java.util.List;
import reseat.text.ListText;

/** Something to be done, by whichever way. */
public sealed interface Work {

    /** Returns a short text: "release lid-1 … lid-4", "move lid". */
    String label();

    /**
     * The release of joints that are alike, each by any of its ways.
     *
     * @param joints ids, in the order of the device file
     */
    record Release(List<String> joints) implements Work {
        public Release {
            joints = List.copyOf(joints);
        }

        @Override
        public String label() {
            return "release " + ListText.ids(joints);
        }
    }

    /**
     * The first move of a part, alone or together with others.
     *
     * @param part id
     */
    record MoveOf(String part) implements Work {
        @Override
        public String label() {
            return "move " + part;
        }
    }
}
