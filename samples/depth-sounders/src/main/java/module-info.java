/** Depth sounders for Reseat. */
module penhallow.sounders {
    requires reseat.files;

    provides reseat.spi.Plugin with
            penhallow.sounders.SoundersPlugin;
}
