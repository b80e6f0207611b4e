package reseat.sheets;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import reseat.model.ConsumableUse;
import reseat.model.Device;
import reseat.plan.Plan;
import reseat.plan.Rebuild;
import reseat.plan.SpareNeed;
import reseat.spi.Output;

/** What a plan needs from the stock, one line each, for a spreadsheet. */
final class NeedsTable implements Output {

    @Override
    public String id() {
        return "needs-csv";
    }

    @Override
    public String title() {
        return "what to have in stock, for a spreadsheet";
    }

    @Override
    public String mediaType() {
        return "text/csv";
    }

    @Override
    public void write(Plan plan, OutputStream to) throws IOException {
        Device device = plan.request().device();
        Words words = new Words(device);
        Rebuild rebuild = Rebuild.of(plan);
        StringBuilder text = new StringBuilder("sort,id,name,quantity,unit,order number,why\r\n");
        for (SpareNeed need : rebuild.spares()) {
            boolean screw = need.reason() == SpareNeed.Reason.LOCKING_PATCH;
            row(
                    text,
                    screw ? "screw" : "part",
                    need.id(),
                    screw ? words.screw(need.id()) : need.name(),
                    Integer.toString(need.count()),
                    "piece",
                    need.number().orElse(""),
                    words.reason(need));
        }
        for (ConsumableUse use : rebuild.consumables()) {
            row(
                    text,
                    "consumable",
                    use.consumable(),
                    words.consumable(use.consumable()),
                    use.quantity().toPlainString(),
                    use.unit(),
                    "",
                    "used up");
        }
        to.write(text.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static void row(StringBuilder text, String... cells) {
        for (int i = 0; i < cells.length; i++) {
            String cell = cells[i];
            boolean quote = cell.matches("(?s).*[\",\r\n].*");
            text.append(i == 0 ? "" : ",")
                    .append(quote ? '"' + cell.replace("\"", "\"\"") + '"' : cell);
        }
        text.append("\r\n");
    }
}
