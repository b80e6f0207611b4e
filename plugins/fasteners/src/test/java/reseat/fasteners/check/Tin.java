package reseat.fasteners.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.files.DeviceFiles;
import reseat.files.Reading;
import reseat.model.Device;

/** A sound tin with screws and bonds as a device file, for tests that make one thing wrong. */
final class Tin {

    private static final String SOUND =
            """
            format: reseat-device/1
            id: tin
            base: tray
            usualPosture: face-up
            screwTypes:
              m2: {thread: M2x0.4, length: 4 mm, head: pan, headDiameter: 4 mm, headHeight: 1.6 mm, drive: T6, class: 8.8}
              st: {thread: ST2, length: 6 mm, head: pan, headDiameter: 3.8 mm, headHeight: 1.6 mm, drive: PH1}
            parts:
              tray: {name: Tray, kind: frame}
              glass: {name: Glass, kind: display}
              lid: {name: Lid, kind: cover}
              foot: {name: Foot, kind: foot}
              board: {name: Board, kind: board, under: [glass]}
              coax: {name: Coax, kind: coax, under: [glass]}
            joints:
              lid-screw:
                kind: screw
                holds: [lid, tray]
                screw: m2
                seat: {form: insert, material: brass, clamped: 1.2, threaded: 2.4, depth: 3, bossOuter: 4, torque: 0.18 N·m, torqueSource: card}
              foot-screw:
                kind: screw
                holds: [foot, tray]
                screw: st
                seat: {form: formed, material: pc-abs, clamped: 1, threaded: 6, depth: 6, bossOuter: 4.4, torque: 0.08 N·m, torqueSource: card, formedCycles: 1}
              board-plug: {kind: zif-connector, holds: [glass, board], under: [glass], slack: true}
              coax-hook: {kind: cable-hook, holds: [coax, tray], under: [glass]}
              board-tape: {kind: tape, holds: [board, tray], under: [glass]}
              glass-bond:
                kind: adhesive-bond
                holds: [glass, tray]
                ways: {usual: {kind: cut-to-depth, consumes: [{of: edge-adhesive, quantity: 100, unit: mm}, {of: cleaner, quantity: 6, unit: ml}]}}
                bond:
                  edge: [[0, 0], [100, 0], [100, 60], [0, 60]]
                  strips: {lower: {path: [[5, 2], [95, 2]], width: 2 mm}}
                  keepOuts: {flex: {part: glass, outline: [[40, 20], [50, 20], [50, 30]]}}
                  margin: 1 mm
                  givenDepths: [{edge: 0, depth: 4 mm}]
            """;

    private Tin() {}

    /**
     * Reads the tin with changes.
     *
     * @param changes pairs: a text that occurs once, and what stands there instead
     */
    static Device with(String... changes) {
        String text = SOUND;
        for (int i = 0; i < changes.length; i += 2) {
            if (text.split(Pattern.quote(changes[i]), -1).length != 2) {
                throw new AssertionError("not once in the tin: " + changes[i]);
            }
            text = text.replace(changes[i], changes[i + 1]);
        }
        try {
            Path file = Files.createTempFile("tin", ".yaml");
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

    /** Returns what all checks find, each as its id, severity and subject. */
    static List<String> found(String... changes) {
        CheckInput input = CheckInput.of(with(changes));
        return FastenerChecks.all().stream()
                .flatMap(check -> check.on(input).stream())
                .sorted()
                .map(Tin::line)
                .toList();
    }

    private static String line(Finding finding) {
        return finding.check() + " " + finding.severity() + " " + finding.subject();
    }
}
