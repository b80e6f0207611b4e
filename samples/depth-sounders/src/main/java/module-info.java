/** Depth sounders for Reseat. */
module penhallow.sounders {
    requires reseat.toolkit;

    provides reseat.spi.Plugin with
            penhallow.sounders.SoundersPlugin;
}
