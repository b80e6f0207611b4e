package reseat.internal.read;

import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import reseat.internal.read.Shape.Scope;

/**
 * The ids that a device tree defines, by what they name. Looks at keys alone, so that it works on a
 * faulty tree too.
 */
final class KnownIds {

    private final Map<Scope, Set<String>> ids = new EnumMap<>(Scope.class);
    private final boolean resolved;

    /**
     * Collects the ids of a tree.
     *
     * @param device a whole device with its defaults, before seats were made joints
     * @param resolved whether kinds and tools need no entry of their own
     */
    KnownIds(Node.Fields device, boolean resolved) {
        this.resolved = resolved;
        for (Scope scope : Scope.values()) {
            ids.put(scope, new LinkedHashSet<>());
        }
        keys(Scope.PART, device.fields("parts"));
        keys(Scope.SUPPLY, device.fields("supplies"));
        keys(Scope.HAZARD, device.fields("hazards"));
        keys(Scope.CONSUMABLE, device.fields("consumables"));
        keys(Scope.SCREW_TYPE, device.fields("screwTypes"));
        keys(Scope.TOOL, device.fields("tools"));
        Node.Fields kinds = device.fields("kinds");
        if (kinds != null) {
            keys(Scope.PART_KIND, kinds.fields("parts"));
            keys(Scope.JOINT_KIND, kinds.fields("joints"));
            keys(Scope.MANIPULATION, kinds.fields("manipulations"));
        }
        Node.Fields setup = device.fields("setup");
        if (setup != null) {
            rowsAndColumns(Scope.POSTURE, setup.fields("posture"));
            if (resolved) {
                rowsAndColumns(Scope.TOOL, setup.fields("tool"));
            }
        }
        of(Scope.JOINT_OR_PART).addAll(of(Scope.PART));
        joints(device.fields("joints"));
    }

    private void keys(Scope scope, Node.@Nullable Fields fields) {
        if (fields != null) {
            of(scope).addAll(fields.entries().keySet());
        }
    }

    private void rowsAndColumns(Scope scope, Node.@Nullable Fields rows) {
        keys(scope, rows);
        if (rows != null) {
            rows.entries().keySet().forEach(row -> keys(scope, rows.fields(row)));
        }
    }

    private void joints(Node.@Nullable Fields joints) {
        keys(Scope.JOINT_OR_PART, joints);
        if (joints != null) {
            joints.entries()
                    .keySet()
                    .forEach(
                            id -> {
                                Node.Fields joint = joints.fields(id);
                                Node.Fields seats = joint == null ? null : joint.fields("seats");
                                if (seats != null) {
                                    seats.entries()
                                            .keySet()
                                            .forEach(
                                                    seat ->
                                                            of(Scope.JOINT_OR_PART)
                                                                    .add(Seats.jointId(id, seat)));
                                }
                            });
        }
    }

    /** Returns the ids of a scope in the order of the file. */
    Set<String> of(Scope scope) {
        return Objects.requireNonNull(ids.get(scope));
    }

    /** Tells whether whatever may be named in another tree may be named in this one. */
    boolean includes(KnownIds other) {
        return other.ids.entrySet().stream()
                .allMatch(each -> of(each.getKey()).containsAll(each.getValue()));
    }

    /** Tells whether an id may be named. A resolved file need not register its kinds. */
    boolean allows(Scope scope, String id) {
        boolean kind =
                scope == Scope.PART_KIND
                        || scope == Scope.JOINT_KIND
                        || scope == Scope.MANIPULATION;
        return of(scope).contains(id) || (resolved && kind);
    }
}
