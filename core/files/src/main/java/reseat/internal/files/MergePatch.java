package reseat.internal.files;

import org.jspecify.annotations.Nullable;

/** JSON Merge Patch (RFC 7396) on located trees: values from the patch keep their locations. */
final class MergePatch {

    private MergePatch() {}

    /**
     * Applies a patch.
     *
     * @param target what is patched; null where there is nothing yet
     * @return the result; neither argument is changed
     */
    static Node apply(@Nullable Node target, Node patch) {
        if (!(patch instanceof Node.Fields changes)) {
            return patch;
        }
        if (!(target instanceof Node.Fields fields)) {
            return new Node.Fields(
                    patch.file(), patch.spot(), patched(EntryMap.NONE, changes.entries()));
        }
        return changes.entries().isEmpty()
                ? fields
                : new Node.Fields(
                        fields.file(), fields.spot(), patched(fields.entries(), changes.entries()));
    }

    private static EntryMap patched(EntryMap target, EntryMap changes) {
        EntryMap.Draft result = new EntryMap.Draft(target, changes.size());
        for (int i = 0; i < changes.size(); i++) {
            Node change = changes.value(i);
            int old = target.keys().find(changes.key(i));
            if (change.isNull()) {
                if (old >= 0) {
                    result.remove(old);
                }
                continue;
            }
            Node before = old < 0 ? null : target.value(old);
            Node after = apply(before, change);
            if (old < 0) {
                result.add(changes, i, after);
            } else if (before instanceof Node.Fields && after instanceof Node.Fields) {
                result.set(old, after);
            } else {
                result.set(old, changes, i, after);
            }
        }
        return result.map();
    }
}
