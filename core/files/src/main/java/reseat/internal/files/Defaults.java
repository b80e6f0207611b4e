package reseat.internal.files;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import reseat.model.Origin;

/**
 * The defaults of devices, and which of them are known to be valid. Immutable and thread-safe:
 * created and checked once, for thousands of files.
 *
 * @param tree the data
 * @param known the ids that the data defines
 * @param checked the valid nodes of the data, by identity: the same node in a device file's tree
 *     was not modified by the file
 * @param files the files that these nodes stand in
 */
record Defaults(Node.Fields tree, KnownIds known, Set<Node> checked, Set<String> files) {

    /** No defaults at all. */
    static final Defaults NONE = unchecked(new Node.Fields(Origin.MEMORY, Map.of()));

    /** Creates defaults none of which count as valid. */
    static Defaults unchecked(Node.Fields tree) {
        return new Defaults(tree, new KnownIds(tree, false), Set.of(), Set.of());
    }

    /**
     * Creates defaults from a tree; if it is not valid on its own, each device is checked in full.
     */
    static Defaults of(Node.Fields tree) {
        Defaults all = unchecked(tree);
        Problems problems = new Problems(BuiltIn.NAME);
        new ShapeCheck(all.known, false, problems).check("defaults", tree, Format.DEFAULTS);
        if (!problems.isEmpty()) {
            return all;
        }
        Set<Node> checked = Collections.newSetFromMap(new IdentityHashMap<>());
        collect(tree, checked);
        Set<String> files =
                checked.stream().map(Node::file).collect(Collectors.toUnmodifiableSet());
        return new Defaults(tree, all.known, checked, files);
    }

    private static void collect(Node.Fields fields, Set<Node> into) {
        into.add(fields);
        for (Node.Entry entry : fields.entries().values()) {
            if (entry.value() instanceof Node.Fields inner) {
                collect(inner, into);
            } else {
                into.add(entry.value());
            }
        }
    }

    /**
     * Returns the defaults as they hold under a device: where the device took an id away, whatever
     * names it has to be examined again.
     */
    Defaults under(KnownIds device) {
        return checked.isEmpty() || device.includes(known) ? this : NONE;
    }

    /** Returns whether a node is part of these defaults, and valid. */
    boolean sound(Node node) {
        // most nodes come from the device file: avoids hashing their identity
        return !files.isEmpty() && files.contains(node.file()) && checked.contains(node);
    }
}
