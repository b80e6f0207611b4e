package reseat.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.given.SameFacts;
import reseat.model.Device;

/** What the documents show is what the reader reads. */
class DocumentsTest {

    @TempDir Path folder;

    @Test
    void theExampleOfTheResolvedFileIsComplete() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "resolved.md"));
        String example = page.substring(page.indexOf("```json\n") + 8, page.lastIndexOf("```"));

        Device box = TinDevice.device(TinDevice.file(folder, "box.json", example));

        assertEquals(2, box.joints().size());
        SameFacts.assertSame(
                box,
                TinDevice.device(TinDevice.file(folder, "back.json", ResolvedJson.write(box))));
    }
}
