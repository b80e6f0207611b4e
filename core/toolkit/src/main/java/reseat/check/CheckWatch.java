package reseat.check;

/** Follows a run of checks, and may end it. */
public interface CheckWatch {

    /** Does nothing. */
    CheckWatch NONE = new CheckWatch() {};

    /** Tells whether the run should end; asked many times a second from one thread. */
    default boolean cancelled() {
        return false;
    }

    /**
     * Tells how far the run is; from several threads, but never at the same time.
     *
     * @param done number of sources that are done
     * @param of number of all sources
     * @param name name of the source that was done last
     */
    default void progress(int done, int of, String name) {}
}
