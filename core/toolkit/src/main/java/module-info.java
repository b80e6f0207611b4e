/**
 * The toolkit: facts of a device, what follows from them, and the interfaces that plugins fill.
 *
 * <p>No parser, no solver, no script engine and no terminal: those are modules above this one. What
 * is exported to all is a promise to plugins; what is exported to one of our own modules is not.
 */
@org.jspecify.annotations.NullMarked
@SuppressWarnings({"requires-automatic", "module"}) // jts has a fixed name but no descriptor
module reseat.toolkit {
    // transitive: @Nullable shows in exported signatures
    requires static transitive org.jspecify;
    requires org.locationtech.jts;

    exports reseat.check;
    exports reseat.fasten;
    exports reseat.graph;
    exports reseat.job;
    exports reseat.model;
    exports reseat.plan;
    exports reseat.query;
    exports reseat.sheet;
    exports reseat.simulate;
    exports reseat.spi;
    exports reseat.stock;
    exports reseat.text;
    // the compiled step graph is what the planner searches on
    exports reseat.internal.graph to
            reseat.planner;

    uses reseat.spi.Plugin;
}
