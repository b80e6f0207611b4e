package reseat.euindex;

import java.util.List;

/**
 * One operation on the way to a part.
 *
 * @param tools ids of the tools used in it at the same time; empty for bare hands
 * @param end what ends it
 */
public record Operation(List<String> tools, End end) {

    /** What ends an operation. */
    public enum End {
        /** A part, or several together, has been removed or moved aside. */
        REMOVED,
        /** The tool is changed before anything was removed. */
        TOOL_CHANGED,
        /** Something has been warmed. */
        HEATED,
        /** Something has been cleaned, or residue removed. */
        CLEANED
    }

    public Operation {
        tools = List.copyOf(tools);
    }
}
