package reseat.internal.read;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import reseat.model.Origin;

/**
 * JSON Merge Patch (RFC 7396) on located trees: what comes from the patch keeps the place it has
 * there.
 */
final class MergePatch {

    private MergePatch() {}

    /**
     * Applies a patch.
     *
     * @param target what is patched; null where there is nothing yet
     * @param patch the patch
     * @return the result; neither argument is changed
     */
    static Node apply(@Nullable Node target, Node patch) {
        if (!(patch instanceof Node.Fields changes)) {
            return patch;
        }
        Origin at = patch.at();
        Map<String, Node.Entry> result = new LinkedHashMap<>();
        if (target instanceof Node.Fields fields) {
            if (changes.entries().isEmpty()) {
                return fields;
            }
            at = fields.at();
            result.putAll(fields.entries());
        }
        changes.entries()
                .forEach(
                        (key, change) -> {
                            if (change.value().isNull()) {
                                result.remove(key);
                                return;
                            }
                            Node.Entry old = result.get(key);
                            Node before = old == null ? null : old.value();
                            Node after = apply(before, change.value());
                            boolean merged =
                                    before instanceof Node.Fields && after instanceof Node.Fields;
                            Origin keyAt = old != null && merged ? old.keyAt() : change.keyAt();
                            result.put(key, new Node.Entry(keyAt, after));
                        });
        return new Node.Fields(at, result);
    }
}
