/** Device family: sealed handheld. */
@org.jspecify.annotations.NullMarked
module reseat.handheld {
    requires static org.jspecify;
    requires reseat.files;
    requires reseat.toolkit;

    provides reseat.spi.Plugin with
            reseat.handheld.HandheldPlugin;
}
