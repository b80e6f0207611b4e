package reseat.check;

/** How much a finding matters; worse ones come first. */
public enum Severity {
    /** Somebody may be hurt or something destroyed. */
    ERROR,
    /** Probably wrong; a person should decide. */
    WARNING,
    /** Worth knowing. */
    NOTE
}
