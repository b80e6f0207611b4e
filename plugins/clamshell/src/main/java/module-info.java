/** Device family: clamshell. */
@org.jspecify.annotations.NullMarked
module reseat.clamshell {
    requires static org.jspecify;
    requires reseat.files;
    requires reseat.toolkit;

    provides reseat.spi.Plugin with
            reseat.clamshell.ClamshellPlugin;
}
