/**
 * The toolkit: facts of a device and everything that is computed from them.
 *
 * <p>What is exported is promised. Everything under {@code reseat.internal} stays closed, to
 * plugins of any kind as well.
 */
@org.jspecify.annotations.NullMarked
@SuppressWarnings("requires-automatic") // jts-core has a fixed module name and no descriptor
module reseat.toolkit {
    // transitive: @Nullable shows in exported signatures
    requires static transitive org.jspecify;
    requires com.fasterxml.jackson.core;
    requires org.locationtech.jts;
    requires org.snakeyaml.engine;

    exports reseat.check;
    exports reseat.device;
    exports reseat.fasten;
    exports reseat.graph;
    exports reseat.job;
    exports reseat.model;
    exports reseat.order;
    exports reseat.plan;
    exports reseat.query;
    exports reseat.script;
    exports reseat.sheet;
    exports reseat.simulate;
    exports reseat.spi;
    exports reseat.stock;
    exports reseat.text;
    exports reseat.time;

    uses reseat.spi.Plugin;
}
