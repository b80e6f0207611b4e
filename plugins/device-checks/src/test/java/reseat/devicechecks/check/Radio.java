package reseat.devicechecks.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.files.DeviceFiles;
import reseat.files.Reading;
import reseat.model.Device;

/** A sound radio as a device file, for tests that make one thing of it wrong. */
final class Radio {

    private static final String SOUND =
            """
            format: reseat-device/1
            id: radio
            base: case
            usualPosture: face-up
            supplies:
              main: {name: Main cell, of: cell}
            tools: {steel-spatula: {name: Steel spatula}, scalpel: {name: Scalpel}, hot-air-gun: {name: Hot air}, pliers: {name: Pliers}}
            screwTypes:
              m2: {thread: M2x0.4, length: 4 mm, head: pan, headDiameter: 4 mm, drive: T6, class: 8.8}
            parts:
              case: {name: Case, kind: frame}
              lid: {name: Lid, kind: cover}
              cell: {name: Cell, kind: cell, under: [lid]}
              board: {name: Board, kind: board, under: [lid, shelf]}
              shelf: {name: Shelf, kind: bracket, under: [lid]}
              tuner: {name: Tuner, kind: module, under: [lid]}
              horn: {name: Speaker, kind: speaker, under: [lid]}
              jack: {name: Jack, kind: module, under: [lid]}
              face: {name: Face, kind: display}
              knob: {name: Knob, kind: button}
            joints:
              lid-screw: {kind: screw, holds: [lid, case], screw: m2}
              cell-plug: {kind: wire-plug, holds: [cell, board], under: [lid], cuts: [main]}
              cell-pad: {kind: pad-bond, holds: [cell, case], under: [lid]}
              shelf-screw: {kind: screw, holds: [shelf, board, case], under: [lid], screw: m2}
              board-screw: {kind: screw, holds: [board, case], under: [lid, shelf], screw: m2}
              tuner-plug: {kind: board-to-board, holds: [tuner, board], under: [lid]}
              tuner-hook: {kind: cable-hook, holds: [tuner, board], under: [lid]}
              horn-plug: {kind: wire-plug, holds: [horn, board], under: [lid]}
              horn-screw: {kind: screw, holds: [horn, case], under: [lid], screw: m2}
              jack-plug: {kind: wire-plug, holds: [jack, board], under: [lid]}
              jack-screw: {kind: screw, holds: [jack, case], screw: m2, ways: {usual: {posture: face-down}}} # from behind
              face-plug: {kind: zif-connector, holds: [face, board], under: [lid], slack: true}
              face-clip: {kind: clip, holds: [face, shelf], under: [case]}
              knob-fit: {kind: press-fit, holds: [knob, case]}
            tests:
              power: {text: Switch it on, of: [cell, board]}
              sound: {text: Listen, of: [tuner, horn, jack, face]}
            """;

    private Radio() {}

    /**
     * Reads the radio with changes.
     *
     * @param changes pairs: a text that occurs once, and what stands there instead
     */
    static Device with(String... changes) {
        String text = SOUND;
        for (int i = 0; i < changes.length; i += 2) {
            if (text.split(java.util.regex.Pattern.quote(changes[i]), -1).length != 2) {
                throw new AssertionError("not once in the radio: " + changes[i]);
            }
            text = text.replace(changes[i], changes[i + 1]);
        }
        try {
            Path file = Files.createTempFile("radio", ".yaml");
            try {
                Files.writeString(file, text);
                Reading reading = DeviceFiles.read(file, Optional.empty(), List.of());
                return reading.device()
                        .orElseThrow(() -> new AssertionError(reading.problems().toString()));
            } finally {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns what all checks find, each as its id and subject. */
    static List<String> found(Device device) {
        return findings(CheckInput.of(device)).stream()
                .map(finding -> finding.check() + " " + finding.subject())
                .toList();
    }

    static List<Finding> findings(CheckInput input) {
        return DeviceChecks.all().stream()
                .flatMap(check -> check.on(input).stream())
                .sorted()
                .toList();
    }
}
