package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GraphCommandTest {

    @TempDir Path folder;
    private String file = "";

    @BeforeEach
    void writeDevice() throws IOException {
        Path path = folder.resolve("box.yaml");
        Files.writeString(
                path,
                """
                format: reseat-device/1
                id: box
                name: Box
                base: tray
                usualPosture: face-up
                parts:
                  tray: {name: Tray, kind: frame}
                  lid: {name: Lid, kind: cover}
                  fan: {name: Fan, kind: fan, under: [lid]}
                joints:
                  lid-snap: {name: Snap, kind: clip, holds: [lid, tray]}
                  fan-snap: {name: Snap, kind: clip, holds: [fan, tray], under: [lid]}
                """);
        file = path.toString();
    }

    @Test
    void printsWhatEveryWayNeeds() {
        Ran ran = Ran.reseat("graph", file, "--free", "fan");

        assertEquals("", ran.err());
        assertEquals(0, ran.code());
        assertTrue(ran.out().contains("Every way needs 4 steps."), ran.out());
        assertTrue(ran.out().contains("└ left behind: lid"), ran.out());
    }

    @Test
    void printsEverythingAndDot() {
        assertTrue(Ran.reseat("graph", file).out().contains("\nPARTS"));
        Ran dot = Ran.reseat("graph", file, "--all", "--dot");
        assertTrue(dot.out().startsWith("digraph steps {\n"), dot.out());
    }

    @Test
    void saysWhyThereIsNoWay() {
        Ran ran = Ran.reseat("graph", file, "--free", "fan", "--forbid-part", "lid");

        assertEquals(0, ran.code());
        assertTrue(ran.out().contains("fan cannot be freed: lid is in its way"), ran.out());
        assertTrue(ran.out().contains("moving lid is forbidden"), ran.out());
    }

    @Test
    void refusesWhatTheDeviceHasNot() {
        Ran ran = Ran.reseat("graph", file, "--free", "fam");

        assertEquals(2, ran.code());
        assertTrue(
                ran.err().contains("box has no part \"fam\" (did you mean \"fan\"?)."), ran.err());
        assertTrue(
                Ran.reseat("graph", file, "--free", "plasticlever")
                        .err()
                        .contains("box has no part \"plasticlever\"."));
        assertEquals(2, Ran.reseat("graph", file, "--free", "fan", "--all").code());
    }
}
