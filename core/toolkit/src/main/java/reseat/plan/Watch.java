package reseat.plan;

/** Monitors a long search: receives progress and may cancel. Called from the searching thread. */
public interface Watch {

    /** Ignores progress and never cancels, except when the thread is interrupted. */
    Watch NONE = new Watch() {};

    /** Returns whether the search should end now. The interrupt flag of the thread ends it too. */
    default boolean cancelled() {
        return false;
    }

    /**
     * Receives progress, about ten times a second.
     *
     * @param expansions states expanded so far
     * @param bestMs cost of the best plan so far, or -1
     * @param lowerBoundMs no valid plan costs less
     */
    default void progress(long expansions, long bestMs, long lowerBoundMs) {}
}
