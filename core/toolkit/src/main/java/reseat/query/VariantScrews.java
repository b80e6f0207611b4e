package reseat.query;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import reseat.fasten.FastenerInputException;
import reseat.fasten.FastenerTables;
import reseat.fasten.LookAlikes;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.ScrewType;
import reseat.query.VariantScrewRow.Change;

/** Compares the screws of variants with those of the base device. */
final class VariantScrews {

    private VariantScrews() {}

    /** Returns the differences; none where the base device is not among the variants. */
    static List<VariantScrewRow> of(FastenerTables tables, Device device, List<Device> variants) {
        Optional<Device> base =
                variants.stream()
                        .filter(each -> each.id().equals(device.id()))
                        .filter(each -> each.variant().isEmpty())
                        .findFirst();
        List<VariantScrewRow> rows = new ArrayList<>();
        for (Device variant : variants) {
            if (base.isPresent() && variant.variant().isPresent()) {
                Set<String> joints = new LinkedHashSet<>(base.get().joints().keySet());
                joints.addAll(variant.joints().keySet());
                for (String joint : joints) {
                    row(tables, base.get(), variant, joint).ifPresent(rows::add);
                }
            }
        }
        return List.copyOf(rows);
    }

    private static Optional<VariantScrewRow> row(
            FastenerTables tables, Device base, Device variant, String joint) {
        ScrewType before = type(base, joint);
        ScrewType after = type(variant, joint);
        if (before == null && after == null) {
            return Optional.empty();
        }
        List<String> differences = new ArrayList<>();
        boolean alike = false;
        Change change = after == null ? Change.LEFT_OUT : Change.ADDED;
        if (before != null && after != null) {
            change = Change.ANOTHER;
            compare(differences, "type", before.id(), after.id());
            compare(differences, "thread", before.thread(), after.thread());
            compare(differences, "length", before.lengthMm() + " mm", after.lengthMm() + " mm");
            compare(differences, "head", before.head(), after.head());
            compare(differences, "drive", before.drive(), after.drive());
            compare(differences, "patch", before.patch(), after.patch());
            if (differences.isEmpty()) {
                return Optional.empty();
            }
            alike = alike(tables, before, after);
        }
        return Optional.of(
                new VariantScrewRow(
                        variant.variant().orElseThrow(),
                        joint,
                        "/joints/" + joint,
                        change,
                        before == null ? "" : before.id(),
                        after == null ? "" : after.id(),
                        differences,
                        alike));
    }

    private static boolean alike(FastenerTables tables, ScrewType before, ScrewType after) {
        try {
            return LookAlikes.visible(tables, before, after, LookAlikes.Eye.of(tables)).isEmpty();
        } catch (FastenerInputException e) {
            return false;
        }
    }

    private static void compare(List<String> all, String what, Object one, Object other) {
        if (!one.equals(other)) {
            all.add(what + " " + one + " / " + other);
        }
    }

    private static @Nullable ScrewType type(Device device, String id) {
        Joint joint = device.joints().get(id);
        return joint == null || joint.seat().isEmpty()
                ? null
                : Objects.requireNonNull(device.screwTypes().get(joint.seat().get().screw()));
    }
}
