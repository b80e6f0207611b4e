package reseat.clamshell;

import reseat.files.FamilyPlugin;

/** Clamshells: devices with a lid on hinges, display inside. */
public final class ClamshellPlugin extends FamilyPlugin {}
