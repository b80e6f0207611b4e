package reseat.query;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import reseat.model.Device;

/** Groups screws by what they have in common. */
final class ScrewGroups {

    private final Device device;
    private final Supplier<List<ScrewRow>> screws;

    ScrewGroups(Device device, Supplier<List<ScrewRow>> screws) {
        this.device = device;
        this.screws = screws;
    }

    List<GroupRow> byType() {
        return group(s -> List.of(s.type()), key -> "/screwTypes/" + key, key -> key, key -> false);
    }

    List<GroupRow> byDrive() {
        return group(s -> List.of(s.drive()), key -> "", key -> key, key -> false);
    }

    List<GroupRow> bySite() {
        return groupByPart(s -> List.of(s.site()));
    }

    List<GroupRow> byCover() {
        return groupByPart(
                s -> {
                    List<String> covers = new ArrayList<>(s.under());
                    s.holds().stream()
                            .filter(part -> !part.equals(s.site()) && !covers.contains(part))
                            .forEach(covers::add);
                    return covers;
                });
    }

    private List<GroupRow> groupByPart(Function<ScrewRow, List<String>> keys) {
        return group(
                keys,
                key -> "/parts/" + key,
                key -> device.part(key).name(),
                key -> DeviceFacts.isMagnetic(device, device.part(key)));
    }

    private List<GroupRow> group(
            Function<ScrewRow, List<String>> keys,
            Function<String, String> pointer,
            Function<String, String> name,
            Function<String, Boolean> magnetic) {
        Map<String, List<ScrewRow>> groups = new LinkedHashMap<>();
        for (ScrewRow screw : screws.get()) {
            keys.apply(screw)
                    .forEach(key -> groups.computeIfAbsent(key, k -> new ArrayList<>()).add(screw));
        }
        List<GroupRow> rows = new ArrayList<>();
        groups.forEach(
                (key, of) ->
                        rows.add(
                                new GroupRow(
                                        key,
                                        pointer.apply(key).isEmpty()
                                                ? of.get(0).pointer()
                                                : pointer.apply(key),
                                        name.apply(key),
                                        magnetic.apply(key),
                                        of.stream().map(ScrewRow::joint).toList(),
                                        of.stream().map(ScrewRow::type).distinct().toList(),
                                        of.stream().map(ScrewRow::drive).distinct().toList())));
        return List.copyOf(rows);
    }
}
