/** A shop's database as a stock. Exports nothing: it is found as a service. */
@org.jspecify.annotations.NullMarked
module reseat.stock.sql {
    requires static org.jspecify;
    requires java.sql;
    requires reseat.files;
    requires reseat.toolkit;

    uses java.sql.Driver;

    provides reseat.spi.Plugin with
            reseat.stock.sql.SqlStockPlugin;
}
