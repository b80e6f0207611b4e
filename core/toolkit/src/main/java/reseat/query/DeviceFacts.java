package reseat.query;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import reseat.fasten.FastenerInputException;
import reseat.fasten.FastenerTables;
import reseat.fasten.LookAlikes;
import reseat.job.Job;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Part;

/**
 * Bulk queries on a device. Every answer is a list of rows in the order of the device file unless
 * stated otherwise. Immutable; answers are computed on first use.
 */
public final class DeviceFacts {

    private final Device device;
    private final FastenerTables tables;
    private final List<Device> variants;
    private final Map<String, Integer> cycles;
    private final Lazy<List<ScrewRow>> screws;
    private final Lazy<List<PartRow>> parts;
    private final Lazy<List<JointRow>> joints;
    private final Lazy<List<TorqueRow>> torques;
    private final Lazy<List<VariantScrewRow>> variantScrews;
    private final ScrewGroups groups;

    private DeviceFacts(
            Device device,
            FastenerTables tables,
            List<Device> variants,
            Map<String, Integer> cycles) {
        this.device = device;
        this.tables = tables;
        this.variants = variants;
        this.cycles = cycles;
        SeatFacts seats = new SeatFacts(device, tables);
        screws = new Lazy<>(seats::screws);
        torques = new Lazy<>(seats::torques);
        joints = new Lazy<>(this::everyJoint);
        parts = new Lazy<>(this::everyPart);
        groups = new ScrewGroups(device, this::screws);
        variantScrews = new Lazy<>(() -> VariantScrews.of(tables, device, variants));
    }

    /** Returns the facts of a device. */
    public static DeviceFacts of(Device device, FastenerTables tables) {
        return new DeviceFacts(device, tables, List.of(device), Map.of());
    }

    /** Returns the facts of a device with these variants, including the base device. */
    public DeviceFacts withVariants(List<Device> all) {
        return new DeviceFacts(device, tables, List.copyOf(all), cycles);
    }

    /** Returns the facts of the unit that a job is about. */
    public DeviceFacts of(Job job) {
        return new DeviceFacts(device, tables, variants, job.cycles());
    }

    /** Returns the device. */
    public Device device() {
        return device;
    }

    /** Returns every screw with a seat. */
    public List<ScrewRow> screws() {
        return screws.get();
    }

    /**
     * Returns the torque of every screw with a seat. Takes a moment, as each torque is estimated.
     */
    public List<TorqueRow> torques() {
        return torques.get();
    }

    /** Returns every part. */
    public List<PartRow> parts() {
        return parts.get();
    }

    /** Returns every joint. */
    public List<JointRow> joints() {
        return joints.get();
    }

    /** Returns every two parts that are held together by joints, with these joints. */
    public List<PairRow> joinedPairs() {
        return JoinedParts.pairs(device);
    }

    /**
     * Returns the parts next to a part: held to it by a joint, in the way of moving it, or under
     * it.
     *
     * @throws IllegalArgumentException if there is no such part
     */
    public List<NeighbourRow> neighbours(String part) {
        return JoinedParts.neighbours(device, part);
    }

    /** Returns every pair of screw types that a person can confuse, most dangerous first. */
    public List<LookAlikeRow> lookAlikes() {
        Map<String, List<String>> byType = new LinkedHashMap<>();
        screws().forEach(
                        s ->
                                byType.computeIfAbsent(s.type(), t -> new ArrayList<>())
                                        .add(s.joint()));
        try {
            return LookAlikes.of(tables, device).pairs().stream()
                    .map(
                            pair ->
                                    new LookAlikeRow(
                                            pair.one(),
                                            pair.other(),
                                            "/screwTypes/" + pair.one(),
                                            pair.differences(),
                                            pair.weight(),
                                            pair.dangerous(),
                                            pair.worst().map(w -> w.told()).orElse(""),
                                            Objects.requireNonNull(byType.get(pair.one())),
                                            Objects.requireNonNull(byType.get(pair.other()))))
                    .toList();
        } catch (FastenerInputException e) {
            return List.of(); // a name that is not in the tables; another check reports it
        }
    }

    /**
     * Returns the screws whose tip is within a distance of a part with a role, nearest first.
     *
     * @param role such as {@link Kind.Role#CELL}
     * @param mm the distance in millimetres; those at exactly this distance are left out
     */
    public List<ClearanceRow> screwsNear(Kind.Role role, double mm) {
        return screws().stream()
                .flatMap(screw -> screw.behind().stream())
                .filter(row -> row.role().equals(Optional.of(role)))
                .filter(row -> row.clearanceMm() < mm - 1e-9)
                .sorted((a, b) -> Double.compare(a.clearanceMm(), b.clearanceMm()))
                .toList();
    }

    /** Returns the screws by their type. */
    public List<GroupRow> screwsByType() {
        return groups.byType();
    }

    /** Returns the screws by their drive; a group's pointer is that of its first screw. */
    public List<GroupRow> screwsByDrive() {
        return groups.byDrive();
    }

    /** Returns the screws by the part that they are driven into. */
    public List<GroupRow> screwsBySite() {
        return groups.bySite();
    }

    /** Returns the screws by each part that hides them or that they hold down. */
    public List<GroupRow> screwsByCover() {
        return groups.byCover();
    }

    /** Returns the joints with a limited number of cycles, with the cycles of the unit. */
    public List<CycleRow> connectors() {
        List<CycleRow> rows = new ArrayList<>();
        for (Joint joint : device.joints().values()) {
            OptionalInt rated = device.kindOf(joint).ratedCycles();
            if (rated.isPresent()) {
                int made = cycles.getOrDefault(joint.id(), joint.madeCycles());
                rows.add(CycleRow.of(joint, made, rated.getAsInt()));
            }
        }
        return List.copyOf(rows);
    }

    /**
     * Returns the screws that only the variant or only the base device has, or that differ between
     * the two. Needs the variants; see {@link #withVariants}.
     */
    public List<VariantScrewRow> variantScrews() {
        return variantScrews.get();
    }

    /** Returns every test. */
    public List<TestRow> tests() {
        return device.tests().values().stream()
                .map(t -> new TestRow(t.id(), "/tests/" + t.id(), t.text(), t.of(), t.needs()))
                .toList();
    }

    /**
     * Returns the parts reached by a connector for which no test names the part or the connector.
     */
    public List<PartRow> untested() {
        return parts().stream().filter(p -> p.electric() && p.tests().isEmpty()).toList();
    }

    private List<JointRow> everyJoint() {
        return device.joints().values().stream()
                .map(
                        j ->
                                new JointRow(
                                        j.id(),
                                        "/joints/" + j.id(),
                                        j.name(),
                                        j.kind(),
                                        device.kindOf(j).role(),
                                        j.holds(),
                                        j.site(),
                                        j.under(),
                                        device.power().needs(j),
                                        j.cuts(),
                                        j.slack(),
                                        testsOf(Set.of(j.id()))))
                .toList();
    }

    private List<PartRow> everyPart() {
        List<PartRow> rows = new ArrayList<>();
        for (Part part : device.parts().values()) {
            List<JointRow> held =
                    joints().stream().filter(j -> j.holds().contains(part.id())).toList();
            Set<String> connectors =
                    held.stream()
                            .filter(j -> j.role().equals(Optional.of(Kind.Role.CONNECTOR)))
                            .map(JointRow::joint)
                            .collect(Collectors.toSet());
            Set<String> named = new HashSet<>(connectors);
            named.add(part.id());
            rows.add(
                    new PartRow(
                            part.id(),
                            "/parts/" + part.id(),
                            part.name(),
                            part.kind(),
                            device.kindOf(part).role(),
                            part.under(),
                            isMagnetic(device, part),
                            !connectors.isEmpty(),
                            part.spare(),
                            held.stream().map(JointRow::joint).toList(),
                            testsOf(named)));
        }
        return List.copyOf(rows);
    }

    static boolean isMagnetic(Device device, Part part) {
        return device.kindOf(part).magnetic()
                || part.move().map(m -> device.manipulation(m.kind()).magnetic()).orElse(false);
    }

    private List<String> testsOf(Set<String> ids) {
        return device.tests().values().stream()
                .filter(test -> test.of().stream().anyMatch(ids::contains))
                .map(test -> test.id())
                .toList();
    }
}
