package reseat.internal.read;

/** Times added up from published elements: what the reader needs of the time engine. */
interface ElementTimes {

    /** Tells whether a text is meant as an index string, sound or not. */
    boolean looksLike(String text);

    /**
     * Returns the time of an index string in milliseconds.
     *
     * @throws IllegalArgumentException with a sentence for the user if it is none
     */
    long ms(String text);
}
