package reseat.internal.files;

import java.util.Collection;
import java.util.List;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Part;
import reseat.model.Power;
import reseat.model.Way;
import reseat.query.NeedText;

/**
 * Writes what follows from the facts of a device: what must be without power before it is touched,
 * and why, and what strains which way.
 */
final class ComputedWriter {

    private final Device device;
    private final Power power;

    ComputedWriter(Device device) {
        this.device = device;
        this.power = device.power();
    }

    void write(JsonObject node) {
        JsonObject all = node.putObject("power");
        ResolvedWriter.list(all, "first", power.first());
        JsonObject dropped = all.putObject("dropped");
        power.dropped().forEach(dropped::put);
        ids(all.putObject("outside"), power.outsideParts(), power.outsideJoints());
        JsonObject ways = all.putObject("onTheWay");
        for (String supply : device.supplies().keySet()) {
            ids(
                    ways.putObject(supply),
                    power.partsOnTheWay(supply),
                    power.jointsOnTheWay(supply));
        }
        needs(node.putObject("needs"));
        strains(node.putObject("strainedBy"));
    }

    private static void ids(JsonObject node, Collection<String> parts, Collection<String> joints) {
        ResolvedWriter.list(node, "parts", List.copyOf(parts));
        ResolvedWriter.list(node, "joints", List.copyOf(joints));
    }

    private void needs(JsonObject node) {
        JsonObject parts = node.putObject("parts");
        for (Part part : device.parts().values()) {
            List<Power.Need> needs =
                    part.move().isEmpty() ? List.of() : power.why(List.of(part.id()));
            if (!needs.isEmpty()) {
                JsonArray all = parts.putArray(part.id());
                for (Power.Need need : needs) {
                    need(
                            all.addObject(),
                            need,
                            NeedText.reason(device, part, need),
                            NeedText.from(device, part, need));
                }
            }
        }
        JsonObject joints = node.putObject("joints");
        for (Joint joint : device.joints().values()) {
            List<Power.Need> needs = power.why(joint);
            if (!needs.isEmpty()) {
                JsonArray all = joints.putArray(joint.id());
                for (Power.Need need : needs) {
                    need(
                            all.addObject(),
                            need,
                            NeedText.reason(device, joint, need),
                            NeedText.from(device, joint, need));
                }
            }
        }
    }

    private static void need(JsonObject node, Power.Need need, String reason, String from) {
        node.put("supply", need.supply())
                .put("rule", NeedText.word(need.rule()))
                .put("reason", need.rule() == Power.Rule.STATED ? "stated" : reason)
                .put("from", from);
    }

    private void strains(JsonObject node) {
        for (Joint joint : device.joints().values()) {
            JsonObject ways = new JsonObject();
            for (Way way : joint.ways().values()) {
                List<String> strains = device.strainedBy(joint, way);
                if (!strains.isEmpty()) {
                    ResolvedWriter.list(ways, way.id(), strains);
                }
            }
            if (!ways.isEmpty()) {
                node.set(joint.id(), ways);
            }
        }
    }
}
