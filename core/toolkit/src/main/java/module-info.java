/**
 * The toolkit: facts of a device and everything that is computed from them.
 *
 * <p>What is exported is promised. Everything under {@code reseat.internal} stays closed, to
 * plugins of any kind as well.
 */
@org.jspecify.annotations.NullMarked
module reseat.toolkit {
    // transitive: @Nullable shows in exported signatures
    requires static transitive org.jspecify;
    requires com.fasterxml.jackson.core;
    requires org.snakeyaml.engine;

    exports reseat.device;
    exports reseat.model;
    exports reseat.plan;
    exports reseat.simulate;
    exports reseat.spi;
    exports reseat.time;
}
