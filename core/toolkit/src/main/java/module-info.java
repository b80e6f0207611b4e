/**
 * The toolkit: the facts of a device, what follows from them, and the interfaces that plugins
 * implement.
 *
 * <p>It has no parser, solver, script engine or terminal; those are in modules above this one.
 * Packages exported to everybody are API for plugins. Qualified exports are internal.
 */
@org.jspecify.annotations.NullMarked
@SuppressWarnings({"requires-automatic", "module"}) // jts has a fixed name but no descriptor
module reseat.toolkit {
    // transitive: @Nullable is in exported signatures
    requires static transitive org.jspecify;
    requires org.locationtech.jts;

    exports reseat.check;
    exports reseat.fasten;
    exports reseat.job;
    exports reseat.model;
    exports reseat.plan;
    exports reseat.query;
    exports reseat.sheet;
    exports reseat.simulate;
    exports reseat.spi;
    exports reseat.stock;
    exports reseat.text;
    exports reseat.internal.spi to
            reseat.files;
}
