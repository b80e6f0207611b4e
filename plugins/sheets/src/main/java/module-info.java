/** Plans as pages and tables. */
@org.jspecify.annotations.NullMarked
module reseat.sheets {
    requires static org.jspecify;
    requires reseat.files;
    requires reseat.toolkit;

    provides reseat.spi.Plugin with
            reseat.sheets.SheetsPlugin;
}
