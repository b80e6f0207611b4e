package reseat.internal.time;

/** The sequence models of Basic MOST. */
public enum SequenceModel {
    /** A thing is moved freely through the air. */
    GENERAL_MOVE("ABGABPA"),
    /** A thing is moved along a fixed path. */
    CONTROLLED_MOVE("ABGMXIA"),
    /** A tool is fetched, put in place, used and laid aside. */
    TOOL_USE("ABGABP*ABPA");

    /** Fasten, loosen, cut, surface treat, measure, record, think. */
    static final String TOOL_LETTERS = "FLCSMRT";

    private final String letters;

    SequenceModel(String letters) {
        this.letters = letters;
    }

    /** Returns the letters in order; {@code *} stands for F, L, C, S, M, R or T. */
    public String letters() {
        return letters;
    }

    /** Returns whether letters are the beginning of this model, or all of it. */
    boolean begins(String given) {
        if (given.length() > letters.length()) {
            return false;
        }
        for (int i = 0; i < given.length(); i++) {
            if (expects(i).indexOf(given.charAt(i)) < 0) {
                return false;
            }
        }
        return true;
    }

    /** Returns the letters that may stand at a place. */
    String expects(int at) {
        if (at >= letters.length()) {
            return "";
        }
        char letter = letters.charAt(at);
        return letter == '*' ? TOOL_LETTERS : String.valueOf(letter);
    }

    /**
     * Returns whether nothing is missing from letters that begin this model; the return (last A)
     * may be left out.
     */
    boolean completedBy(String given) {
        return begins(given) && given.length() >= letters.length() - 1;
    }
}
