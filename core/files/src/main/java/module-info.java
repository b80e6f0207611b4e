/** What is read and written: device files, plans, stock and settings files, scripts, plugins. */
@org.jspecify.annotations.NullMarked
module reseat.files {
    // transitive: @Nullable is in exported signatures
    requires static transitive org.jspecify;
    requires transitive reseat.toolkit;
    requires com.fasterxml.jackson.core;
    requires org.snakeyaml.engine;

    exports reseat.files;

    uses reseat.spi.Plugin;
}
