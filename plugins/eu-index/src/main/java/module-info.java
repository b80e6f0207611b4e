/** The repairability index of the European Union, as an assessment. */
@org.jspecify.annotations.NullMarked
module reseat.euindex {
    requires static org.jspecify;
    requires reseat.toolkit;

    provides reseat.spi.Plugin with
            reseat.euindex.EuIndexPlugin;
}
