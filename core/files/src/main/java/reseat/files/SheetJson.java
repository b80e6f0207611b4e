package reseat.files;

import java.util.Objects;
import reseat.internal.files.SheetWriter;
import reseat.sheet.Sheet;

/** Writes sheets for other programs. The format is documented in core/docs/sheet-json.md. */
public final class SheetJson {

    private SheetJson() {}

    /**
     * Writes a sheet.
     *
     * @return JSON with line feeds, ending with one; the same sheet always gives the same text
     */
    public static String write(Sheet sheet) {
        return SheetWriter.write(Objects.requireNonNull(sheet, "sheet"));
    }
}
