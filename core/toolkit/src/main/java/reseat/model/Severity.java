package reseat.model;

/** The severity of a finding or of a problem in a file, most severe first. */
public enum Severity {
    /** Somebody may be hurt or something destroyed; of a file: nothing can be computed from it. */
    ERROR,
    /** Probably wrong; a person should decide. */
    WARNING,
    /** Worth knowing. */
    NOTE
}
