package reseat.internal.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import reseat.model.Origin;

/**
 * The locations of the facts of a device tree, by JSON Pointer. Ids need no escapes in a pointer.
 * Locations are collected on first use, as most are never needed.
 */
final class Places {

    private final Node.Fields tree;
    private final Origin file;
    private final String builtIn;
    private @Nullable Map<String, Origin> collected;

    /**
     * Creates the locations of a tree.
     *
     * @param tree the device tree, seats spread out
     * @param file the file as a whole, for facts without a location
     * @param builtIn name of the built-in data, whose locations are omitted: they are not part of
     *     the device
     */
    Places(Node.Fields tree, Origin file, String builtIn) {
        this.tree = tree;
        this.file = file;
        this.builtIn = builtIn;
    }

    private void collect(Map<String, Origin> origins, String pointer, Node node, Origin at) {
        if (!at.file().equals(builtIn)) {
            origins.put(pointer, at);
        }
        if (node instanceof Node.Fields fields) {
            // an entry is located by its key: that is where a person looks for "lid-screw"
            fields.entries()
                    .forEach(
                            (key, entry) ->
                                    collect(
                                            origins,
                                            pointer + "/" + key,
                                            entry.value(),
                                            entry.keyAt()));
        } else if (node instanceof Node.Items items) {
            List<Node> list = items.items();
            for (int i = 0; i < list.size(); i++) {
                collect(origins, pointer + "/" + i, list.get(i), list.get(i).at());
            }
        }
    }

    /** Returns all locations. */
    Map<String, Origin> all() {
        Map<String, Origin> origins = collected;
        if (origins == null) {
            origins = new LinkedHashMap<>();
            collect(origins, "", tree, tree.at());
            collected = origins;
        }
        return origins;
    }

    /** Returns the location of a pointer, or of the nearest enclosing fact. */
    Origin at(String pointer) {
        for (String at = pointer; ; at = at.substring(0, at.lastIndexOf('/'))) {
            Origin origin = all().get(at);
            if (origin != null) {
                return origin;
            }
            if (at.lastIndexOf('/') < 0) {
                return file;
            }
        }
    }
}
