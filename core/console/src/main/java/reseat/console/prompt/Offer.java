package reseat.console.prompt;

/**
 * One completion.
 *
 * @param start start of the text that it replaces
 * @param text its replacement
 * @param says a short description; may be empty
 * @param fits whether its type is expected here
 * @param group its group ("files"); empty for names of the language
 */
record Offer(int start, String text, String says, boolean fits, String group) {

    static Offer name(int start, String text, String says) {
        return new Offer(start, text, says, false, "");
    }
}
