package reseat.internal.files;

import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import reseat.internal.files.Shape.Scope;
import reseat.model.Ids;

/**
 * The ids that a device tree defines, by what they name. Uses only keys, so that it works on an
 * invalid tree too.
 */
final class KnownIds {

    private final Map<Scope, Set<String>> ids = new EnumMap<>(Scope.class);
    private final Node.Fields device;
    private final boolean resolved;

    /**
     * Whether all of them are well formed; not recorded for joints, which are seldom referenced.
     */
    private final boolean sound;

    /**
     * Collects the ids of a tree.
     *
     * @param device a whole device with its defaults, before seats were expanded to joints
     * @param resolved whether kinds and tools need no entry of their own
     */
    KnownIds(Node.Fields device, boolean resolved) {
        this.device = device;
        this.resolved = resolved;
        ids.put(Scope.NEW, Set.of());
        ids.put(Scope.PART, keys(device, "parts"));
        ids.put(Scope.SUPPLY, keys(device, "supplies"));
        ids.put(Scope.HAZARD, keys(device, "hazards"));
        ids.put(Scope.CONSUMABLE, keys(device, "consumables"));
        ids.put(Scope.SCREW_TYPE, keys(device, "screwTypes"));
        Node.Fields kinds = device.fields("kinds");
        ids.put(Scope.PART_KIND, keys(kinds, "parts"));
        ids.put(Scope.JOINT_KIND, keys(kinds, "joints"));
        ids.put(Scope.MANIPULATION, keys(kinds, "manipulations"));
        Node.Fields setup = device.fields("setup");
        ids.put(Scope.POSTURE, rowsAndColumns(Set.of(), setup, "posture"));
        Set<String> tools = keys(device, "tools");
        ids.put(Scope.TOOL, resolved ? rowsAndColumns(tools, setup, "tool") : tools);
        boolean valid = true;
        for (Set<String> some : ids.values()) {
            for (String id : some) {
                valid &= Ids.valid(id);
            }
        }
        this.sound = valid;
    }

    private static Set<String> keys(Node.@Nullable Fields fields, String key) {
        Node.Fields table = fields == null ? null : fields.fields(key);
        return table == null ? Set.of() : table.entries().keySet();
    }

    private static Set<String> rowsAndColumns(
            Set<String> before, Node.@Nullable Fields setup, String key) {
        Set<String> all = new LinkedHashSet<>(before);
        Node.Fields rows = setup == null ? null : setup.fields(key);
        if (rows != null) {
            Set<String> names = rows.entries().keySet();
            all.addAll(names);
            for (String row : names) {
                all.addAll(keys(rows, row));
            }
        }
        return all;
    }

    /** Joints, entries with seats and the joints of their seats, after some other ids. */
    private Set<String> joints(Set<String> before) {
        Set<String> all = new LinkedHashSet<>(before);
        Node.Fields joints = device.fields("joints");
        EntryMap entries = joints == null ? EntryMap.NONE : joints.entries();
        all.addAll(entries.keySet());
        for (int i = 0; i < entries.size(); i++) {
            if (entries.value(i) instanceof Node.Fields joint) {
                for (String seat : keys(joint, "seats")) {
                    all.add(Seats.jointId(entries.key(i), seat));
                }
            }
        }
        return all;
    }

    /** Returns the ids of a scope in the order of the file. */
    Set<String> of(Scope scope) {
        if (!ofJoints(scope)) {
            return Objects.requireNonNull(ids.get(scope));
        }
        Set<String> before = scope == Scope.JOINT ? Set.of() : of(Scope.PART);
        return ids.computeIfAbsent(scope, joints -> joints(before));
    }

    private static boolean ofJoints(Scope scope) {
        return scope == Scope.JOINT || scope == Scope.JOINT_OR_PART;
    }

    /** Returns whether every id of some defaults is also known in this tree. */
    boolean includes(KnownIds defaults) {
        return defaults.ids.entrySet().stream()
                .filter(each -> !ofJoints(each.getKey()))
                .allMatch(each -> of(each.getKey()).containsAll(each.getValue()));
    }

    /**
     * A fast test that accepts most known, well-formed ids, if all ids defined here are well
     * formed.
     */
    boolean surelyAllows(Scope scope, String id) {
        Set<String> some = ids.get(scope);
        return sound && !ofJoints(scope) && some != null && some.contains(id);
    }

    /** Returns whether an id may be named. A resolved file need not register its kinds. */
    boolean allows(Scope scope, String id) {
        boolean kind =
                scope == Scope.PART_KIND
                        || scope == Scope.JOINT_KIND
                        || scope == Scope.MANIPULATION;
        return of(scope).contains(id) || (resolved && kind);
    }
}
