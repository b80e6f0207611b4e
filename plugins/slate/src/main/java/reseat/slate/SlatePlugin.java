package reseat.slate;

import reseat.spi.FamilyPlugin;

/** Slates: flat devices with a display on the whole front. */
public final class SlatePlugin extends FamilyPlugin {}
