package reseat.internal.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import reseat.model.Problem;

/** The kinds, tools, hazards and set-up times that every device starts from. */
final class BuiltIn {

    /** The file name in locations of the built-in data. */
    static final String NAME = "built-in";

    private static final String RESOURCE = "builtin.yaml";

    private BuiltIn() {}

    /** Holds the tree, parsed once: it is the same for every device, and immutable. */
    private static final class Holder {
        private static final Node.Fields TREE = load();
        private static final Defaults DEFAULTS = Defaults.of(TREE);
    }

    static Defaults defaults() {
        return Holder.DEFAULTS;
    }

    static Node.Fields tree() {
        return Holder.TREE;
    }

    private static Node.Fields load() {
        try (InputStream in = BuiltIn.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException(
                        "the resource " + RESOURCE + " is missing from this build");
            }
            Problems problems = new Problems(NAME);
            Node tree = Trees.parse(NAME, in.readAllBytes(), problems).orElse(null);
            if (!(tree instanceof Node.Fields fields) || problems.hasErrors()) {
                throw new IllegalStateException(
                        RESOURCE
                                + " is faulty: "
                                + problems.sorted().stream().map(Problem::toString).toList());
            }
            return fields;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
