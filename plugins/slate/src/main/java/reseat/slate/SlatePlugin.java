package reseat.slate;

import reseat.files.FamilyPlugin;

/** Slates: flat devices with a display on the whole front. */
public final class SlatePlugin extends FamilyPlugin {}
