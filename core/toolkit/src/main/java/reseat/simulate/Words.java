package reseat.simulate;

import java.util.Collection;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Part;
import reseat.model.Prepare;
import reseat.model.Supply;
import reseat.model.Tool;
import reseat.text.ListText;

/** The names of a device's parts, joints and tools, as used in the middle of a sentence. */
final class Words {

    private final Device device;

    Words(Device device) {
        this.device = device;
    }

    String part(String id) {
        Part part = device.part(id);
        return "the " + lower(part.name());
    }

    String parts(Collection<String> ids) {
        return ListText.and(ids.stream().map(this::part).toList());
    }

    /** A joint without a name is called by its id. */
    String joint(Joint joint) {
        return joint.name().equals(joint.id()) ? joint.id() : "the " + lower(joint.name());
    }

    String supply(String id) {
        Supply supply = device.supplies().get(id);
        return "the " + lower(supply == null ? id : supply.name());
    }

    String tool(String id) {
        Tool tool = device.tools().get(id);
        return "the " + lower(tool == null ? id : tool.name());
    }

    /** "by hand", "with the T5 bit". */
    String means(String tool) {
        return tool.equals(device.hand()) ? "by hand" : "with " + tool(tool);
    }

    static String posture(String id) {
        return id.replace('-', ' ');
    }

    String prepare(String id) {
        Prepare prepare = device.prepares().get(id);
        String text = prepare == null ? id : prepare.text();
        return text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
    }

    /** The act as the subject of a sentence: "releasing the fan plug", "moving the lid". */
    String doing(Act act) {
        if (act instanceof Act.Prepared prepared) {
            return "\"" + prepare(prepared.prepare()) + "\"";
        }
        if (act instanceof Act.Release release) {
            Joint joint = device.joint(release.joint());
            String way = joint.ways().size() > 1 ? " by the way \"" + release.way() + "\"" : "";
            return "releasing " + joint(joint) + way;
        }
        return "moving " + parts(((Act.MoveParts) act).parts());
    }

    /** Makes a sentence: capital letter and full stop. A bare id at its head keeps its letters. */
    static String sentence(String text) {
        String head = text.substring(0, Math.max(0, text.indexOf(' ')));
        boolean word = !head.isEmpty() && head.chars().allMatch(Character::isLetter);
        return (word ? Character.toUpperCase(text.charAt(0)) + text.substring(1) : text) + ".";
    }

    /** "Top case" becomes "top case"; "USB board" and "T5 bit" stay. */
    private static String lower(String name) {
        if (name.length() < 2 || !Character.isLowerCase(name.charAt(1))) {
            return name;
        }
        return Character.toLowerCase(name.charAt(0)) + name.substring(1);
    }
}
