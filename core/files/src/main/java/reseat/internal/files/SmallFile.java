package reseat.internal.files;

import java.nio.file.Path;
import java.util.Optional;
import reseat.model.BadInputException;
import reseat.text.ListText;

/** Reads the files beside a device file: YAML or JSON with a few known keys. */
final class SmallFile {

    private SmallFile() {}

    /**
     * Reads a file and checks it against its shape. Errors are only collected, so that the caller
     * can add more.
     *
     * @param what what the file is, for messages
     * @throws BadInputException if the text cannot be parsed
     */
    static Node.Fields read(Path path, String what, Shape.Group shape, Problems problems)
            throws BadInputException {
        Optional<byte[]> content = Sources.load(path, path.toString(), problems);
        if (content.isEmpty()) {
            throw new BadInputException(problems.sorted());
        }
        return parse(path.toString(), content.get(), what, shape, problems);
    }

    /** Reads bytes in the same way. */
    static Node.Fields parse(
            String name, byte[] content, String what, Shape.Group shape, Problems problems)
            throws BadInputException {
        Node root = Trees.parse(name, content, problems).orElse(null);
        if (root instanceof Node.Fields fields) {
            new ShapeCheck(new KnownIds(fields, false), false, problems).check(what, fields, shape);
            return fields;
        }
        if (root != null) {
            problems.error(
                    root.at(),
                    "found "
                            + root.describe()
                            + ", expected the keys of a "
                            + what
                            + " file: "
                            + ListText.and(shape.keys().keySet()));
        }
        throw new BadInputException(problems.sorted());
    }
}
