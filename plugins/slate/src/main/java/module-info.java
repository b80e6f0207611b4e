/** Device family: slate. */
@org.jspecify.annotations.NullMarked
module reseat.slate {
    requires static org.jspecify;
    requires reseat.files;
    requires reseat.toolkit;

    provides reseat.spi.Plugin with
            reseat.slate.SlatePlugin;
}
