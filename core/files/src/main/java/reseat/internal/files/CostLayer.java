package reseat.internal.files;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import reseat.model.Origin;
import reseat.spi.CostTable;
import reseat.text.QuoteText;

/** Applies a cost table to the defaults of a device. */
final class CostLayer {

    private static final List<String> KEYS = List.of("setup", "tools", "kinds");

    private CostLayer() {}

    /** Returns the defaults with a table applied; its errors are reported. */
    static Node.Fields over(Node.Fields defaults, CostTable table, Problems problems) {
        String name = "cost table " + table.id();
        try (InputStream in = table.open()) {
            Node tree = Trees.parse(name, in.readNBytes(Sources.MAX_BYTES), problems).orElse(null);
            if (tree instanceof Node.Fields fields) {
                fields.entries()
                        .forEach(
                                (key, entry) -> {
                                    if (!KEYS.contains(key)) {
                                        problems.error(
                                                entry.keyAt(),
                                                "cost table: unknown key "
                                                        + QuoteText.of(key)
                                                        + "."
                                                        + Words.hint(key, KEYS, "keys"));
                                    }
                                });
                return (Node.Fields) MergePatch.apply(defaults, fields);
            }
        } catch (IOException | RuntimeException | LinkageError | StackOverflowError e) {
            // third-party code: whatever it throws is reported as a problem of its data
            problems.error(new Origin(name, 0, 0), "this table cannot be read: " + e.getMessage());
        }
        return defaults;
    }
}
