package reseat.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Way;
import reseat.text.ListText;

/** The names and wording of kinds, parts and joints. */
record Sayings(Device device) {

    Set<String> hazards(Act act) {
        Set<String> all = new LinkedHashSet<>();
        if (act instanceof Act.Prepared prepared) {
            all.addAll(Objects.requireNonNull(device.prepares().get(prepared.prepare())).hazards());
        } else if (act instanceof Act.Release release) {
            Joint joint = device.joint(release.joint());
            Way way = Objects.requireNonNull(joint.ways().get(release.way()));
            all.addAll(device.kindOf(joint).hazards());
            all.addAll(device.manipulation(way.kind()).hazards());
            all.addAll(way.hazards());
            joint.holds().forEach(part -> ofPart(part, all));
        } else if (act instanceof Act.MoveParts move) {
            for (String part : move.parts()) {
                ofPart(part, all);
                all.addAll(device.manipulation(device.move(part).kind()).hazards());
                all.addAll(device.move(part).hazards());
            }
        }
        return all;
    }

    Set<String> hazards(String part) {
        Set<String> all = new LinkedHashSet<>();
        ofPart(part, all);
        return all;
    }

    private void ofPart(String id, Set<String> all) {
        all.addAll(device.kindOf(device.part(id)).hazards());
        all.addAll(device.part(id).hazards());
    }

    Set<String> handling(Joint joint, Way way) {
        Set<String> all = new LinkedHashSet<>(device.kindOf(joint).handling());
        all.addAll(device.manipulation(way.kind()).handling());
        all.addAll(way.handling());
        return all;
    }

    /** Covers that leave together with what they cover are not handled separately. */
    Set<String> handling(String part, boolean alone) {
        Kind kind = device.kindOf(device.part(part));
        boolean carried = !alone && kind.role().filter(Kind.Role.COVER::equals).isPresent();
        Set<String> all = new LinkedHashSet<>(carried ? List.of() : kind.handling());
        Kind how = device.manipulation(device.move(part).kind());
        all.addAll(how.handling());
        all.addAll(device.move(part).handling());
        return all;
    }

    String name(Joint joint) {
        return joint.name().equals(joint.id()) ? joint.id().replace('-', ' ') : joint.name();
    }

    String joints(List<Joint> joints) {
        return ListText.and(joints.stream().map(this::name).distinct().toList());
    }

    String names(Iterable<String> parts) {
        List<String> names = new ArrayList<>();
        parts.forEach(part -> names.add(device.part(part).name()));
        return ListText.and(names);
    }

    String posture(String id) {
        return id.replaceFirst("-([0-9]+)$", " at $1°").replace('-', ' ');
    }
}
