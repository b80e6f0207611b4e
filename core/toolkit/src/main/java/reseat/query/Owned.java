package reseat.query;

import java.util.List;
import java.util.Optional;
import reseat.fasten.Drive;
import reseat.fasten.Drives;
import reseat.fasten.FastenerTables;
import reseat.stock.StockItem;

/** Determines which tools a shop has. */
final class Owned {

    private final Drives drives;
    private final Optional<List<String>> listed;
    private final Optional<List<StockItem>> stock;

    Owned(FastenerTables tables, Optional<List<String>> listed, Optional<List<StockItem>> stock) {
        this.drives = tables.drives();
        this.listed = listed;
        this.stock = stock;
    }

    /** Returns whether it has a tool; empty if unknown. */
    Optional<Boolean> has(String tool, Optional<String> drive) {
        boolean inStock =
                stock.orElse(List.of()).stream()
                        .filter(item -> item.kind() == StockItem.Kind.TOOL)
                        .filter(item -> item.onHand().signum() > 0)
                        .anyMatch(
                                item ->
                                        item.serves().contains(tool)
                                                || (drive.isPresent()
                                                        && item.serves().contains(drive.get())));
        if (inStock) {
            return Optional.of(true);
        }
        if (drive.isPresent() && listed.isPresent()) {
            return Optional.of(listed.get().stream().anyMatch(own -> fits(own, drive.get())));
        }
        boolean told =
                stock.orElse(List.of()).stream()
                        .anyMatch(item -> item.kind() == StockItem.Kind.TOOL);
        return told ? Optional.of(false) : Optional.empty();
    }

    private boolean fits(String own, String wanted) {
        Optional<Drive> driver = drives.find(own);
        Optional<Drive> recess = drives.find(wanted);
        return own.equalsIgnoreCase(wanted)
                || (driver.isPresent()
                        && recess.isPresent()
                        && drives.fit(driver.get(), recess.get()).good());
    }
}
