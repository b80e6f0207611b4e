package reseat.console.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import reseat.console.sheet.Terminal;
import reseat.files.ResolvedJson;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Part;
import reseat.model.Way;
import reseat.text.TimeText;

/** Prints the facts of a device with every default applied. */
@Command(
        name = "facts",
        description = "Print the facts of a device, with variant, family and seat tables applied.",
        customSynopsis = "reseat facts FILE [ID] [OPTIONS]",
        sortOptions = false,
        footer = {
            "",
            "Examples:",
            "  reseat facts samples/tansy/tansy.yaml",
            "  reseat facts samples/quill/quill.yaml fan-screw.a",
            "  reseat facts samples/sorrel/sorrel.yaml --variant lte --json > sorrel-lte.json",
            "",
            "The output of --json is itself a device file that every command can read."
        })
final class FactsCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;

    @Mixin private DeviceArgs deviceArgs = new DeviceArgs();

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "ID",
            description = "A part, joint or supply: all facts about it, with where each was read.")
    private @Nullable String id;

    @Option(
            names = "--json",
            description = "Print a resolved device file; see core/docs/resolved.md.")
    private boolean json;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Device device = deviceArgs.read(spec.commandLine().getErr());
        if (json) {
            out.print(ResolvedJson.write(device));
            return 0;
        }
        if (id != null) {
            new FactsOfOne(device, out).print(id);
            return 0;
        }
        out.println(
                device.name()
                        + " ("
                        + device.id()
                        + device.variant().map(v -> ", variant " + v).orElse("")
                        + "): "
                        + device.parts().size()
                        + " parts, "
                        + device.joints().size()
                        + " joints, "
                        + device.screwTypes().size()
                        + " types of screw, "
                        + device.supplies().size()
                        + (device.supplies().size() == 1 ? " supply" : " supplies"));
        out.println();
        PowerFacts power = new PowerFacts(device);
        out.println("Power, with what is on the way to the joints that cut it.");
        power.supplies().forEach(line -> out.println(plain("  " + line)));
        out.println();
        out.println("Parts, with how each is moved: kind, tool, posture, time out + time back.");
        device.parts().values().forEach(part -> part(device, part, power, out));
        out.println();
        out.println("Joints, with what each holds (the site last) and its ways, as above.");
        device.joints().values().forEach(joint -> joint(device, joint, power, out));
        return 0;
    }

    private static void part(Device device, Part part, PowerFacts power, PrintWriter out) {
        String move =
                part.id().equals(device.base())
                        ? "base"
                        : part.move()
                                .map(
                                        m ->
                                                m.kind()
                                                        + ", "
                                                        + m.tool()
                                                        + ", "
                                                        + m.posture()
                                                        + ", "
                                                        + TimeText.of(m.ms())
                                                        + " + "
                                                        + TimeText.of(m.restoreMs()))
                                .orElse("");
        out.println(
                plain(
                        "  "
                                + part.id()
                                + ": "
                                + part.name()
                                + ", "
                                + part.kind()
                                + "; "
                                + move
                                + list("; under ", part.under())
                                + list("; its spare brings ", part.spareIncludes())
                                + power.needs(part)));
    }

    private static void joint(Device device, Joint joint, PowerFacts power, PrintWriter out) {
        String ways =
                joint.ways().values().stream()
                        .map(way -> way(device, joint, way))
                        .collect(Collectors.joining(" | "));
        out.println(
                plain(
                        "  "
                                + joint.id()
                                + ": "
                                + joint.kind()
                                + " "
                                + String.join(" + ", joint.holds())
                                + (joint.slack() ? ", slack" : "")
                                + (joint.gives() ? ", gives" : "")
                                + joint.seat().map(seat -> ", " + seat.screw()).orElse("")
                                + list("; under ", joint.under())
                                + list("; cuts ", joint.cuts())
                                + "; "
                                + ways
                                + power.needs(joint)));
    }

    private static String way(Device device, Joint joint, Way way) {
        return way.id()
                + ": "
                + way.kind()
                + ", "
                + way.tool()
                + ", "
                + way.posture()
                + ", "
                + TimeText.of(way.ms())
                + " + "
                + TimeText.of(way.restoreMs())
                + list(", ruins ", way.ruins())
                + list(", strained by ", device.strainedBy(joint, way));
    }

    private static String list(String label, List<String> ids) {
        return ids.isEmpty() ? "" : label + String.join(" ", ids);
    }

    private static String plain(String line) {
        return Terminal.detect().fitted(line.replace('\u00a0', ' '));
    }
}
