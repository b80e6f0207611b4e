package reseat.oracle;

import java.util.stream.Collectors;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Joint;
import reseat.model.Part;
import reseat.model.Rules;
import reseat.model.State;

/**
 * A device and what is asked of it.
 *
 * @param seed seed that it was made from
 * @param device the device
 * @param start where the unit stands
 * @param goal what to achieve
 * @param rules what is forbidden, required and permitted
 */
record Case(long seed, Device device, State start, Goal goal, Rules rules) {

    Case with(State newStart) {
        return new Case(seed, device, newStart, goal, rules);
    }

    /** Returns the facts in a few lines, for the message of a failed test. */
    @Override
    public String toString() {
        StringBuilder text =
                new StringBuilder(
                        "seed " + seed + ": " + goal + " from " + start + "\n" + rules + "\n");
        text.append("prepare ").append(device.prepares().values()).append('\n');
        text.append("supplies ").append(device.supplies().values()).append('\n');
        text.append("lay aside ").append(device.setup().layAsideMs());
        text.append(" turn open ").append(device.setup().turnOpenMs()).append('\n');
        for (Part part : device.parts().values()) {
            text.append(part.kind()).append(' ').append(part.id());
            text.append(" under ").append(part.under());
            part.needs().ifPresent(needs -> text.append(" needs ").append(needs));
            part.move()
                    .ifPresent(
                            m ->
                                    text.append(" move ")
                                            .append(m.tool())
                                            .append(' ')
                                            .append(m.posture())
                                            .append(' ')
                                            .append(m.ms())
                                            .append('+')
                                            .append(m.restoreMs()));
            text.append(" includes ").append(part.spareIncludes()).append('\n');
        }
        for (Joint joint : device.joints().values()) {
            text.append(joint.kind())
                    .append(' ')
                    .append(joint.id())
                    .append(joint.slack() ? " slack" : "")
                    .append(joint.gives() ? " gives" : "")
                    .append(" holds ")
                    .append(joint.holds())
                    .append(" under ")
                    .append(joint.under())
                    .append(joint.needs().map(needs -> " needs " + needs).orElse(""))
                    .append(" cuts ")
                    .append(joint.cuts())
                    .append(" ways ")
                    .append(
                            joint.ways().values().stream()
                                    .map(
                                            w ->
                                                    w.id()
                                                            + " "
                                                            + w.kind()
                                                            + " "
                                                            + w.tool()
                                                            + " "
                                                            + w.posture()
                                                            + " "
                                                            + w.ms()
                                                            + "+"
                                                            + w.restoreMs()
                                                            + (w.ruins().isEmpty()
                                                                    ? ""
                                                                    : " ruins " + w.ruins())
                                                            + w.strainedBy()
                                                                    .map(by -> " strained by " + by)
                                                                    .orElse(""))
                                    .collect(Collectors.joining(", ")))
                    .append('\n');
        }
        for (String from : device.setup().tools()) {
            text.append("tool ").append(from);
            device.setup()
                    .tools()
                    .forEach(to -> text.append(' ').append(device.setup().toolChangeMs(from, to)));
            text.append('\n');
        }
        for (String from : device.setup().postures()) {
            text.append("posture ").append(from);
            device.setup()
                    .postures()
                    .forEach(
                            to ->
                                    text.append(' ')
                                            .append(device.setup().postureChangeMs(from, to)));
            text.append('\n');
        }
        return text.toString();
    }
}
