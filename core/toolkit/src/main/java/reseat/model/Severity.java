package reseat.model;

/** How much it matters: a finding of a check, a problem of a file. Worse ones come first. */
public enum Severity {
    /** Somebody may be hurt or something destroyed; of a file: nothing can be computed from it. */
    ERROR,
    /** Probably wrong; a person should decide. */
    WARNING,
    /** Worth knowing. */
    NOTE
}
