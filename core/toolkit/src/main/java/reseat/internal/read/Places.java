package reseat.internal.read;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.model.Origin;

/** Where the facts of a device tree stand, by JSON Pointer. Ids need no escapes in a pointer. */
final class Places {

    private final Map<String, Origin> origins = new LinkedHashMap<>();
    private final Origin file;

    /**
     * Collects the places of a tree.
     *
     * @param tree the device tree, seats spread out
     * @param file the file as a whole, for facts that stand nowhere
     * @param builtIn name of the built-in data, whose places are left out: they are no part of the
     *     device
     */
    Places(Node.Fields tree, Origin file, String builtIn) {
        this.file = file;
        collect("", tree, tree.at(), builtIn);
    }

    private void collect(String pointer, Node node, Origin at, String builtIn) {
        if (!at.file().equals(builtIn)) {
            origins.put(pointer, at);
        }
        if (node instanceof Node.Fields fields) {
            // an entry is shown by its key: that is where a person looks for "lid-screw"
            fields.entries()
                    .forEach(
                            (key, entry) ->
                                    collect(
                                            pointer + "/" + key,
                                            entry.value(),
                                            entry.keyAt(),
                                            builtIn));
        } else if (node instanceof Node.Items items) {
            List<Node> list = items.items();
            for (int i = 0; i < list.size(); i++) {
                collect(pointer + "/" + i, list.get(i), list.get(i).at(), builtIn);
            }
        }
    }

    Map<String, Origin> all() {
        return origins;
    }

    /** Returns the place of a pointer, or of the nearest fact that encloses it. */
    Origin at(String pointer) {
        for (String at = pointer; ; at = at.substring(0, at.lastIndexOf('/'))) {
            Origin origin = origins.get(at);
            if (origin != null) {
                return origin;
            }
            if (at.lastIndexOf('/') < 0) {
                return file;
            }
        }
    }
}
