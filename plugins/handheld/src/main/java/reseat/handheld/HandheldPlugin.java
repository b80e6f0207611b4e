package reseat.handheld;

import reseat.files.FamilyPlugin;

/** Sealed handhelds: devices for one hand, tight against dust and water. */
public final class HandheldPlugin extends FamilyPlugin {}
