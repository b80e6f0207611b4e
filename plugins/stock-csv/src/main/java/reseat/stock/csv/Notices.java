package reseat.stock.csv;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import reseat.stock.StockItem;

/** Reports where the spreadsheet and the journal disagree. */
final class Notices {

    private Notices() {}

    static List<String> of(Ledger ledger, Sheet sheet) {
        List<String> told = new ArrayList<>();
        for (Map.Entry<String, BigDecimal> each : ledger.held().entrySet()) {
            String id = each.getKey();
            StockItem row = sheet.rows().get(id);
            String by = " (" + String.join(", ", ledger.holders(id)) + ")";
            BigDecimal left = sheet.quantity(id).subtract(ledger.used(id));
            if (row == null) {
                told.add(
                        "line "
                                + id
                                + " is missing from the spreadsheet, but "
                                + plain(each.getValue())
                                + " of it are reserved"
                                + by
                                + ". The reservation remains valid.");
            } else if (left.compareTo(each.getValue()) < 0) {
                told.add(
                        "of "
                                + id
                                + " ("
                                + row.name()
                                + ") "
                                + plain(each.getValue())
                                + " "
                                + row.unit()
                                + " are reserved"
                                + by
                                + ", but only "
                                + plain(left.max(BigDecimal.ZERO))
                                + " are left. The reservations remain valid; count again or"
                                + " release one.");
            }
        }
        ledger.unsettled().forEach((id, use) -> told.add(unsettled(id, use, sheet)));
        return told;
    }

    private static String unsettled(String id, Ledger.Use use, Sheet sheet) {
        StockItem row = sheet.rows().get(id);
        String used = plain(use.quantity());
        if (row == null) {
            return "line " + id + " is missing from the spreadsheet; " + used + " of it were used.";
        }
        boolean changed = row.onHand().compareTo(use.seen()) != 0;
        return used
                + " "
                + row.unit()
                + " of "
                + id
                + " ("
                + row.name()
                + ") were used and are subtracted from the spreadsheet's quantity: it was "
                + plain(use.seen())
                + " then and is now "
                + plain(row.onHand())
                + ". "
                + (changed
                        ? "If it already includes that use, settle " + id + "."
                        : "Subtract it there too, then settle " + id + ".");
    }

    private static String plain(BigDecimal number) {
        return number.toPlainString();
    }
}
