package reseat.sheets;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import reseat.sheet.Need;
import reseat.spi.Output;

/** The needs of a plan from the stock, one per line, for a spreadsheet. */
final class NeedsTable implements Output {

    @Override
    public String id() {
        return "needs-csv";
    }

    @Override
    public String title() {
        return "list of needs, for a spreadsheet";
    }

    @Override
    public String mediaType() {
        return "text/csv";
    }

    @Override
    public String fileName() {
        return "needs.csv";
    }

    @Override
    public void write(Content content, Place place) throws IOException {
        StringBuilder text = new StringBuilder("sort,id,name,quantity,unit,order number,why\r\n");
        for (Need need : content.sheet().needs()) {
            switch (need.kind()) {
                case TARGET, RUINED -> row(text, "part", need, need.why());
                case NEW_SCREWS -> row(text, "screw", need, need.why());
                case USED_UP -> row(text, "consumable", need, "used up");
                case TOOL,
                        INSTRUMENT,
                        HEAT,
                        PROTECTION,
                        AIR,
                        FIRE,
                        INSULATION,
                        SCREWS_OUT,
                        WORN -> {
                    // not taken from the stock
                }
            }
        }
        try (OutputStream to = place.single()) {
            to.write(text.toString().getBytes(StandardCharsets.UTF_8));
        }
    }

    private static void row(StringBuilder text, String sort, Need need, String why) {
        String[] cells = {
            sort,
            need.id(),
            need.name(),
            need.quantity().toPlainString(),
            need.unit(),
            need.number().orElse(""),
            why
        };
        for (int i = 0; i < cells.length; i++) {
            String cell = cells[i];
            boolean quote = cell.matches("(?s).*[\",\r\n].*");
            text.append(i == 0 ? "" : ",")
                    .append(quote ? '"' + cell.replace("\"", "\"\"") + '"' : cell);
        }
        text.append("\r\n");
    }
}
