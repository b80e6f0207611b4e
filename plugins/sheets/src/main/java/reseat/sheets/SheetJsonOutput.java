package reseat.sheets;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import reseat.files.SheetJson;
import reseat.spi.Output;

/** A sheet as JSON. */
final class SheetJsonOutput implements Output {

    @Override
    public String id() {
        return "sheet-json";
    }

    @Override
    public String title() {
        return "work sheet as JSON";
    }

    @Override
    public String mediaType() {
        return "application/json";
    }

    @Override
    public String fileName() {
        return "sheet.json";
    }

    @Override
    public void write(Content content, Place place) throws IOException {
        try (OutputStream to = place.single()) {
            to.write(SheetJson.write(content.sheet()).getBytes(StandardCharsets.UTF_8));
        }
    }
}
