/** Checks of fasteners, and commands about them. */
@org.jspecify.annotations.NullMarked
module reseat.fasteners {
    requires static org.jspecify;
    requires reseat.files;
    requires reseat.toolkit;

    provides reseat.spi.Plugin with
            reseat.fasteners.FastenersPlugin;
}
