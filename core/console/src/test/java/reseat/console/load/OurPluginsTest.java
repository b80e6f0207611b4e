package reseat.console.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.spi.Output;

/** Where plugins are looked for. */
class OurPluginsTest {

    @TempDir Path folder;

    private Path made(String name) throws IOException {
        return Files.createDirectories(folder.resolve(name));
    }

    @Test
    void besideTheProgramAndInTheHomeOfTheUser() throws IOException {
        Path shop = made("program/plugins");
        Path own = made("home/.local/share/reseat/plugins");

        assertEquals(
                List.of(shop, own),
                OurPlugins.folders(
                        Map.of(),
                        folder.resolve("program").toString(),
                        folder.resolve("home/.local/share/reseat")));
    }

    @Test
    void whereTheShopSays() throws IOException {
        made("program/plugins");
        Path own = made("data/reseat/plugins");

        assertEquals(
                List.of(Path.of("one"), Path.of("two"), own),
                OurPlugins.folders(
                        Map.of("RESEAT_PLUGINS", "one" + File.pathSeparator + "two"),
                        folder.resolve("program").toString(),
                        folder.resolve("data/reseat")));
    }

    @Test
    void aFolderThatIsNotThereIsNoMatterUnlessItIsNamed() {
        assertEquals(
                List.of(), OurPlugins.folders(Map.of(), folder.toString(), folder.resolve("x")));
    }

    @Test
    void whatAPluginThrowsIsToldAsItsOwn() {
        Output torn =
                OurPlugins.quietly().outputs().stream()
                        .filter(output -> output.id().equals("needs-csv"))
                        .findFirst()
                        .orElseThrow();

        PluginFailed failed =
                assertThrows(
                        PluginFailed.class,
                        () ->
                                OurPlugins.asked(
                                        torn,
                                        "output needs-csv",
                                        () -> {
                                            throw new IllegalStateException("the paper is torn");
                                        }));

        assertEquals(
                "reseat: the output needs-csv of the plugin sheets 0.1 failed:"
                        + " IllegalStateException: the paper is torn",
                failed.getMessage());
    }
}
