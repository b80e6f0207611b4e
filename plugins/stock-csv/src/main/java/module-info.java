/** A shop's spreadsheet as a stock. Exports nothing: it is found as a service. */
@org.jspecify.annotations.NullMarked
module reseat.stock.csv {
    requires static org.jspecify;
    requires com.fasterxml.jackson.core;
    requires de.siegmar.fastcsv;
    requires reseat.files;
    requires reseat.toolkit;

    provides reseat.spi.Plugin with
            reseat.stock.csv.CsvStockPlugin;
}
