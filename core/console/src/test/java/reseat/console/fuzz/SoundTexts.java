package reseat.console.fuzz;

import static java.nio.file.StandardCopyOption.REPLACE_EXISTING;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import reseat.console.load.OurPlugins;
import reseat.files.DeviceFiles;
import reseat.files.PlanJson;
import reseat.files.ResolvedJson;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.planner.Planner;
import reseat.spi.DeviceFamily;
import reseat.testkit.DeviceShape;
import reseat.testkit.GeneratedDevice;

/** Texts of each format that are as they should be: what changes begin with. */
final class SoundTexts {

    /** A device whose seats are in a table beside it. */
    static final String SEATED =
            "format: reseat-device/1\nid: s\nbase: b\nseatTable: seats.csv\nparts: {b: {}, lid: {}}\n"
                    + "screwTypes: {m2: {thread: M2x0.4, length: 4 mm, head: pan, drive: PH0}}\n"
                    + "joints: {lid-screw: {kind: screw, holds: [lid, b], screw: m2}}\n";

    /** A small device with everything in it. */
    private static final DeviceShape SMALL = new DeviceShape(6, 10, 1, 2, 2, 0.3, 0.3, 1, 2, 0.3);

    private final Path folder;
    private final List<DeviceFamily> families = OurPlugins.quietly().families();
    private final Map<Format, List<String>> sound = new EnumMap<>(Format.class);

    /**
     * Makes the texts.
     *
     * @param folder where to put the files that it takes
     * @param samples folder of the samples
     */
    SoundTexts(Path folder, Path samples) throws IOException {
        this.folder = folder;
        for (Format format : Format.values()) {
            sound.put(format, new ArrayList<>());
        }
        try (Stream<Path> files = Files.walk(samples)) {
            for (Path file : (Iterable<Path>) files.sorted()::iterator) {
                if (file.getFileName().toString().matches(".*\\.(csv|yaml)")) {
                    sample(file);
                }
            }
        }
        for (int seed = 1; seed <= 12; seed++) {
            // read back, it has its kinds registered
            String text = ResolvedJson.write(GeneratedDevice.of(SMALL, seed));
            Path file = Files.writeString(folder.resolve("start.json"), text);
            resolved(DeviceFiles.read(file, Optional.empty(), families).device().orElseThrow());
        }
        of(Format.CSV)
                .addAll(
                        List.of(
                                "joint,seat,x,y,clamped,behind\nlid-screw,c,1,2,\"1,5\",b 2; lid 3\nlid-screw,d,3,4,,\n",
                                "seat;joint;y;x;torque\r\nc;lid-screw;1,5;2,25;0.06 N·m\r\nd;lid-screw;3;4;\r\n"));
        of(Format.YAML).add(SEATED.replace("seatTable: seats.csv\n", ""));
        of(Format.STATE).add("released: [display-bond, board-screw/a]\nplaces: [[display]]\n");
        of(Format.STATE)
                .add(
                        "released: [display-bond, display-flex, cell-plug]\nplaces: [[display], [latch]]\n");
        of(Format.PLAN)
                .add("[\"prepare:shut-down\", \"release:fan-plug/pull\", \"move:lid+hinge\"]");
        sample(Path.of("src/test/resources/reseat/console/bonded.yaml"));
        of(Format.JOB)
                .add(
                        "format: reseat-job/1\nid: j-7\nunit: \"7\"\ndevice: bonded\ncycles: {cell-plug: 3}\n");
        of(Format.KNOWN)
                .add(
                        "format: reseat-known/1\nknown:\n- check: live\n  device: quill\n  subject: fan-plug\n  reason: it is so\n  until: 2027-01-01\n");
        of(Format.UNITS)
                .addAll(
                        List.of(
                                "0.06 N·m",
                                "6 N.cm",
                                "8 ozf in",
                                "1.6 mm",
                                "0.1in",
                                "4.2 s",
                                "1.5 min",
                                "-1e3 µm"));
    }

    /** Returns the texts of a format, at least one. */
    List<String> of(Format format) {
        return sound.get(format);
    }

    /** Samples of families that only their own plugins know are no devices here. */
    private void sample(Path file) throws IOException {
        Path copy = Files.copy(file, folder.resolve(file.getFileName()), REPLACE_EXISTING);
        if (file.toString().endsWith(".yaml")) {
            Optional<Device> device = DeviceFiles.read(copy, Optional.empty(), families).device();
            if (device.isPresent()) {
                of(Format.YAML).add(Files.readString(copy));
                resolved(device.get());
            }
        }
    }

    private void resolved(Device device) throws IOException {
        String text = ResolvedJson.write(device);
        of(Format.RESOLVED).add(text);
        // what a family gave stands in it too, so that most samples are only sound as resolved
        String plain =
                text.substring(0, text.indexOf("\"computed\""))
                        .replaceFirst(",\\s*$", "}")
                        .replace("\"resolved\": true,", "")
                        .replaceAll("(\"(?:layAside|turnOpen|dwell)\": *)(\\d+)", "$1\"$2 ms\"");
        Path file = Files.writeString(folder.resolve("start.json"), plain);
        if (DeviceFiles.read(file, Optional.empty(), families).device().isPresent()) {
            of(Format.JSON).add(plain);
        }
        if (device.joints().size() < 12) {
            PlanResult result = new Planner().plan(PlanRequest.of(device, new Goal.Teardown()));
            if (result instanceof PlanResult.Found found) {
                of(Format.PLAN).add(PlanJson.write(found.plan()));
            }
        }
    }
}
