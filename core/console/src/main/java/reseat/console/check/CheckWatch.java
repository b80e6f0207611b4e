package reseat.console.check;

/** Monitors a run of checks, and may cancel it. */
public interface CheckWatch {

    /** Does nothing. */
    CheckWatch NONE = new CheckWatch() {};

    /** Returns whether the run should end; called many times a second from one thread. */
    default boolean cancelled() {
        return false;
    }

    /**
     * Reports progress; called from several threads, but never concurrently.
     *
     * @param done number of sources that are done
     * @param of number of all sources
     * @param name name of the source that was done last
     */
    default void progress(int done, int of, String name) {}
}
