package reseat.internal.loader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.fasten.FastenerTable;
import reseat.files.PluginFiles;
import reseat.spi.DeviceFamily;
import reseat.spi.DeviceTemplate;
import reseat.spi.PluginInfo;
import reseat.spi.Plugins;
import reseat.spi.Question;

/** A family in a bare folder: it works like one in a jar, and what is wrong with it is named. */
class FamilyFolderTest {

    private static final String HEAD =
            """
            # Lamps for the workshop.
            format = reseat-family/1
            id = lamp
            title = work lamp
            version = 2
            fasteners = family-torques.csv

            [template lamp]
            title = lamp with a shade
            text = new-lamp.yaml

            [question shade]
            asks = Does it have a shade?
            choices = no, yes

            [question width]
            asks = Width in mm?
            from = 10
            to = 90
            usual = 50
            """;

    private static final String TEXT = "id: ${id}\nshade: 1 #? shade=yes\nwidth: ${width}\n";

    private static final String TORQUES =
            "family,thread,material,torque,source,tag\nlamp,M3x0.5,brass,0.5 N·m,our own,shop\n";

    @TempDir Path work;
    private Path folder;
    private Path lamp;

    @BeforeEach
    void lamp() throws IOException {
        folder = Files.createDirectory(work.resolve("plugins"));
        lamp = Files.createDirectory(folder.resolve("my-lamp"));
        write("family.ini", HEAD);
        write("defaults.yaml", "supplies: {cell: {name: Cell}}\n");
        write("new-lamp.yaml", TEXT);
        write("family-torques.csv", TORQUES);
        write("notes.txt", "what nobody names is left alone");
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(lamp.resolve(name), text);
    }

    private void head(String from, String to) throws IOException {
        assertTrue(HEAD.contains(from), from);
        write("family.ini", HEAD.replace(from, to));
    }

    private Plugins load() {
        return PluginFiles.load(List.of(folder));
    }

    private String refusal() {
        Plugins plugins = load();
        assertTrue(plugins.family("lamp").isEmpty());
        assertEquals(1, plugins.refused().size(), plugins.refused().toString());
        return plugins.refused().get(0).why();
    }

    @Test
    void aSoundOneIsAPlugin() throws IOException {
        Plugins plugins = load();

        assertEquals(List.of(), plugins.refused());
        Plugins.Loaded loaded = plugins.loaded().get(plugins.loaded().size() - 1);
        assertTrue(loaded.data());
        assertEquals(Optional.of(lamp), loaded.from());
        assertEquals(new PluginInfo("lamp", "2", "work lamp"), loaded.plugin().info());
        DeviceFamily family = plugins.family("lamp").orElseThrow();
        try (InputStream in = family.openDefaults()) {
            assertEquals(
                    "supplies: {cell: {name: Cell}}\n",
                    new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
        assertEquals(Map.of("family-torques.csv", TORQUES), family.fastenerRows());
        assertTrue(
                plugins.fastenerTables().rows(FastenerTable.FAMILY_TORQUES).stream()
                        .anyMatch(row -> row.key().contains("lamp")));
    }

    @Test
    void itsTemplateAsksAndWrites() {
        DeviceTemplate template = load().family("lamp").orElseThrow().templates().get(0);

        assertEquals(
                List.of(
                        Question.choice("shade", "Does it have a shade?", "no", "yes"),
                        Question.number("width", "Width in mm?", 10, 90, 50)),
                template.questions());
        assertEquals(
                "id: desk\nwidth: 12\n",
                template.write(Map.of("id", "desk", "shade", "no", "width", "12")));
    }

    @Test
    void aLineEndAndAByteOrderMarkOfAnotherSystemDoNoHarm() throws IOException {
        write("family.ini", "\uFEFF" + HEAD.replace("\n", "\r\n"));

        assertEquals(List.of(), load().refused());
    }

    @Test
    void allFaultsOfItsHeadAreNamedWithTheirLines() throws IOException {
        write(
                "family.ini",
                """
                format = reseat-family/9
                id = My Lamp
                titel = work lamp
                just words

                [question early]
                asks = Why?
                [template lamp]
                title =
                text = new-lamp.yaml
                text = new-lamp.yaml
                [question width]
                asks = Width in mm?
                from = ten
                to = 90
                usual = 50
                [question width]
                asks = Height in mm?
                from = 1
                to = 9
                usual = 50
                [question name]
                asks = Name?
                choices = a, b
                usual = c
                [shade]
                """);

        assertEquals(
                """
                family.ini: title is missing
                family.ini:1: found format "reseat-family/9", expected reseat-family/1
                family.ini:2: found the id "My Lamp", expected lower case letters, digits and hyphens, 64 at most
                family.ini:3: unknown key "titel", expected one of format, id, title, version, fasteners. Did you mean "title"?
                family.ini:4: found "just words", expected key = value or [section]
                family.ini:6: [question early] must be below a [template ID]
                family.ini:9: title has no value
                family.ini:11: text is already given in line 10
                family.ini:14: found "ten", expected a whole number
                family.ini:17: a second question width
                family.ini:21: width: the default answer: found "50", expected a whole number from 1 to 9
                family.ini:22: name is a built-in answer; choose another id
                family.ini:25: name: the default answer: found "c", expected one of a, b
                family.ini:26: unknown section [shade], expected [template ID] or [question ID]""",
                refusal().replace("; family.ini", "\nfamily.ini"));
    }

    @Test
    void aMissingFileIsNamed() throws IOException {
        Files.delete(lamp.resolve("new-lamp.yaml"));
        Files.delete(lamp.resolve("defaults.yaml"));

        assertEquals(
                "defaults.yaml: there is no such file;"
                        + " family.ini:10: new-lamp.yaml: there is no such file",
                refusal());
    }

    @Test
    void aTemplateThatNobodyCanFillInIsNamedWithTheLine() throws IOException {
        write(
                "new-lamp.yaml",
                """
                id: ${id}
                colour: ${colour}
                shade: 1 #? shade=maybe
                seats: ${seats shade 4}
                gap: ${Width}
                shade: 2 #? shade
                """);

        assertEquals(
                """
                new-lamp.yaml:2: the text names colour, which no question asks for
                new-lamp.yaml:3: #? shade: found "maybe", expected one of no, yes
                new-lamp.yaml:4: seats need height, which asks for no number
                new-lamp.yaml:4: seats need shade, which asks for no number
                new-lamp.yaml:5: a gap is ${name} or ${seats name margin}
                new-lamp.yaml:6: a condition is #? name=value or #? name!=value, at the end of its line""",
                refusal().replace("; new-lamp", "\nnew-lamp"));
    }

    @Test
    void aRowThatIsNoneIsNamedWithTheLine() throws IOException {
        write("family-torques.csv", TORQUES.replace("shop", "heard"));

        String why = refusal();

        assertTrue(why.startsWith("the rows of the family lamp: family-torques.csv:2:"), why);
    }

    @Test
    void aTableThatIsNoneIsNamedWithTheNearest() throws IOException {
        head("= family-torques.csv", "= family-torqes.csv");

        String why = refusal();

        assertTrue(
                why.startsWith(
                        "family.ini:6: found \"family-torqes.csv\", expected a file named as a"
                                + " fastener table: "),
                why);
        assertTrue(why.endsWith(" Did you mean \"family-torques.csv\"?"), why);
    }

    @Test
    void aPathOutOfTheFolderIsRefused() throws IOException {
        Files.writeString(folder.resolve("secret.yaml"), TEXT);

        for (String path :
                List.of(
                        "../secret.yaml",
                        "sub/../../secret.yaml",
                        "..\\secret.yaml",
                        folder.resolve("secret.yaml").toString())) {
            head("text = new-lamp.yaml", "text = " + path);

            assertEquals(
                    "family.ini:10: \""
                            + path
                            + "\" leaves the folder of the family;"
                            + " name a file in it",
                    refusal());
        }
    }

    @Test
    void aLinkOutOfTheFolderIsRefused() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.yaml"), TEXT).toRealPath();
        for (String name : List.of("new-lamp.yaml", "defaults.yaml", "family.ini")) {
            Files.move(lamp.resolve(name), work.resolve(name));
            Files.createSymbolicLink(lamp.resolve(name), secret);

            String why = refusal();

            assertTrue(why.contains(name + ": it leads out of the folder, to " + secret), why);
            Files.delete(lamp.resolve(name));
            Files.move(work.resolve(name), lamp.resolve(name));
        }
    }

    @Test
    void aLinkInsideTheFolderIsFollowed() throws IOException {
        Files.createDirectory(lamp.resolve("texts"));
        Files.move(lamp.resolve("new-lamp.yaml"), lamp.resolve("texts/plain.yaml"));
        Files.createSymbolicLink(lamp.resolve("new-lamp.yaml"), Path.of("texts", "plain.yaml"));

        assertEquals(List.of(), load().refused());
    }

    @Test
    void whatIsNoTextIsNamed() throws IOException {
        Files.write(lamp.resolve("new-lamp.yaml"), new byte[] {(byte) 0xC3, 0x28});
        Files.delete(lamp.resolve("defaults.yaml"));
        Files.createDirectory(lamp.resolve("defaults.yaml"));

        assertEquals(
                "defaults.yaml: it is not a regular file; family.ini:10: new-lamp.yaml: it is not UTF-8",
                refusal());
    }

    @Test
    void anIdThatIsTakenIsRefused() throws IOException {
        Path second = Files.createDirectory(folder.resolve("our-lamp"));
        for (String name :
                List.of("family.ini", "defaults.yaml", "new-lamp.yaml", "family-torques.csv")) {
            Files.copy(lamp.resolve(name), second.resolve(name));
        }

        Plugins plugins = load();

        assertEquals(
                List.of(
                        "plugin lamp ("
                                + second
                                + "): the id of its plugin lamp is already used by plugin"
                                + " lamp ("
                                + lamp
                                + ")"),
                plugins.refused().stream().map(Plugins.Refused::toString).toList());
        assertTrue(plugins.family("lamp").isPresent());
    }

    @Test
    void aFamilyAndJarsInOneFolderAreRefused() throws IOException {
        write("words.jar", "no jar at all");

        assertEquals(
                "it holds family.ini and words.jar; a folder is either the data of a family or a"
                        + " plugin with jars",
                refusal());
    }

    @Test
    void theFolderOfAFamilyIsNoFolderOfPlugins() {
        assertEquals(
                "it is a family itself; name the folder that it lies in",
                PluginFiles.load(List.of(lamp)).refused().get(0).why());
    }
}
