package reseat.console.prompt;

/**
 * One way to go on with what is being typed.
 *
 * @param start where in the text it replaces what was typed
 * @param text what it puts there
 * @param says what it is, in a few words; may be empty
 * @param fits whether its type is what is wanted here
 * @param group what sort of thing it is ("files"); empty for names of the language
 */
record Offer(int start, String text, String says, boolean fits, String group) {

    static Offer name(int start, String text, String says) {
        return new Offer(start, text, says, false, "");
    }
}
