package reseat.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Collectors;
import reseat.given.Samples;
import reseat.model.Device;

/** A small sound device, and what the tests do with it. */
final class TinDevice {

    /** A lid over a cell and a board on a tray. */
    static final String TIN =
            """
            format: reseat-device/1
            id: tin
            name: Tin
            base: tray
            outline: {width: 60 mm, height: 40 mm}
            supplies:
              cell: {name: Main cell}
            screwTypes:
              m2x4: {thread: M2x0.4, length: 4 mm, head: pan, drive: PH0}
            parts:
              tray: {name: Tray, kind: frame}
              lid: {name: Lid, kind: cover}
              cell: {name: Cell, kind: cell, under: [lid]}
              board: {name: Board, kind: board, under: [lid]}
            joints:
              lid-screw:
                kind: screw
                holds: [lid, tray]
                screw: m2x4
                seat: {form: insert, material: brass, clamped: 1.2 mm, threaded: 2.5 mm}
                seats:
                  a: {x: 5, y: 5}
                  b: {x: 55, y: 5, torque: 0.18 N·m}
              cell-plug: {kind: wire-plug, holds: [cell, board], under: [lid], cuts: [cell]}
              cell-pad: {kind: pad-bond, holds: [cell, tray], under: [lid]}
              board-screw: {kind: screw, holds: [board, tray], under: [lid], needs: [cell], screw: m2x4}
            tests:
              charge: {text: It charges, of: [cell, cell-plug, lid-screw]}
            variants:
              glued:
                joints:
                  lid-screw: null
                  lid-bond: {kind: adhesive-bond, holds: [lid, tray]}
                tests: {charge: {of: [cell]}}
            """;

    private TinDevice() {}

    /** Puts the tin into a file, with a text replaced. */
    static Path tin(Path folder, String found, String put) {
        if (!TIN.contains(found)) {
            throw new IllegalArgumentException("the tin has no " + found);
        }
        return file(folder, "tin.yaml", TIN.replace(found, put));
    }

    static Path file(Path folder, String name, String content) {
        try {
            return Files.writeString(folder.resolve(name), content);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Reading read(Path file) {
        return DeviceFiles.read(file, Optional.empty(), Samples.families());
    }

    /** Reads a device that must be sound. */
    static Device device(Path file) {
        Reading reading = read(file);
        return reading.device().orElseThrow(() -> new AssertionError(reading.problems()));
    }

    /** Returns the problems of a file, a line each, the folder left out. */
    static String problems(Path file) {
        return problems(read(file), file);
    }

    static String problems(Reading reading, Path file) {
        return reading.problems().stream()
                .map(problem -> problem.toString().replace(file.getParent() + "/", ""))
                .collect(Collectors.joining("\n"));
    }
}
