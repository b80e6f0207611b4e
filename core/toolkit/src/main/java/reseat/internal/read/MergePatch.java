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
                            result.put(
                                    key,
                                    new Node.Entry(
                                            old == null ? change.keyAt() : old.keyAt(),
                                            apply(
                                                    old == null ? null : old.value(),
                                                    change.value())));
                        });
        return new Node.Fields(at, result);
    }
}
