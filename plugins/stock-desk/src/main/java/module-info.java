/** The commands for the shop's stock: list, reserve, use, and what can be done today. */
@org.jspecify.annotations.NullMarked
module reseat.stock.desk {
    requires static org.jspecify;
    requires reseat.files;
    requires reseat.toolkit;

    provides reseat.spi.Plugin with
            reseat.stock.desk.StockDeskPlugin;
}
