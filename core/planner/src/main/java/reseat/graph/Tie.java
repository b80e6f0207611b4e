package reseat.graph;

import java.util.List;
import reseat.text.ListText;

/**
 * Why two parts move together.
 *
 * @param parts the parts that it ties; for a cover, the cover first
 * @param kind what ties them
 * @param joints the joints that do; empty for a cover
 */
public record Tie(List<String> parts, Kind kind, List<String> joints) {

    public Tie {
        parts = List.copyOf(parts);
        joints = List.copyOf(joints);
    }

    /** Returns a short text: "hinge-1 holds lid and frame", "shield lies on board". */
    public String label() {
        return switch (kind) {
            case RIGID ->
                    ListText.ids(joints) + Labels.verb(joints, " hold") + " " + ListText.and(parts);
            case SLACK ->
                    ListText.ids(joints)
                            + Labels.verb(joints, " link")
                            + " "
                            + ListText.and(parts)
                            + " with play";
            case GIVES ->
                    ListText.ids(joints)
                            + Labels.verb(joints, " cling")
                            + " to "
                            + ListText.and(parts);
            case COVER -> parts.get(0) + " lies over " + parts.get(1);
        };
    }

    /** What ties parts. */
    public enum Kind {
        /** Joints without play: they cannot lie apart. */
        RIGID,
        /** Joints with play: they may lie apart. */
        SLACK,
        /** Joints that let go by themselves when the parts come apart. */
        GIVES,
        /** One lies over the other and may stay on it. */
        COVER
    }
}
