package reseat.euindex;

/**
 * A part that the index counts, with its weight.
 *
 * <p>Source: Delegated Regulation (EU) 2023/1669, consolidated state of 10 May 2026, Annex IV point
 * 5.
 */
public enum PriorityPart {
    /** The battery with its electronics, tray and connections. */
    BATTERY("battery", 30, 25),
    /** The display assembly. */
    DISPLAY("display", 30, 25),
    /** The back cover or back cover assembly. */
    BACK_COVER("back-cover", 10, 9),
    /** The front-facing camera assembly. */
    FRONT_CAMERA("front-camera", 5, 4),
    /** The rear-facing camera assembly. */
    REAR_CAMERA("rear-camera", 5, 4),
    /** The external charging port. */
    CHARGING_PORT("charging-port", 5, 4),
    /** Mechanical buttons. */
    BUTTON("button", 5, 4),
    /** The main microphones; one for noise reduction alone does not count. */
    MICROPHONE("microphone", 5, 4),
    /** The speakers. */
    SPEAKER("speaker", 5, 4),
    /** The hinge assembly or the mechanism that folds the display. */
    FOLDING("folding-mechanism", 0, 17);

    private final String id;
    private final int weight;
    private final int foldableWeight;

    PriorityPart(String id, int weight, int foldableWeight) {
        this.id = id;
        this.weight = weight;
        this.foldableWeight = foldableWeight;
    }

    /** Returns the id that statements name it by. */
    public String id() {
        return id;
    }

    /** Returns its weight in hundredths. */
    public int weight(boolean foldable) {
        return foldable ? foldableWeight : weight;
    }
}
