package reseat.graph;

import java.util.List;
import reseat.text.ListText;

/** Something that holds once it is reached: an OR node, reached by any of its steps. */
public sealed interface Fact {

    /** Returns a short text: "fan-plug released", "lid and board apart", "cell cut". */
    String label();

    /**
     * Joints that are alike are all released.
     *
     * @param joints ids, in the order of the device file
     */
    record Released(List<String> joints) implements Fact {
        public Released {
            joints = List.copyOf(joints);
        }

        @Override
        public String label() {
            return ListText.ids(joints) + " released";
        }
    }

    /**
     * Two parts have been in different places.
     *
     * @param part id of the one that covers the other, where one does
     * @param other id of the other
     */
    record Apart(String part, String other) implements Fact {
        @Override
        public String label() {
            return part + " and " + other + " apart";
        }
    }

    /**
     * A supply is cut.
     *
     * @param supply id
     */
    record Cut(String supply) implements Fact {
        @Override
        public String label() {
            return supply + " cut";
        }
    }
}
