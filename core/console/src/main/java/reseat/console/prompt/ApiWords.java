package reseat.console.prompt;

/** First sentences of the documentation of the toolkit. */
final class ApiWords {

    private ApiWords() {}

    /** Returns what a member is, in a few words; empty where nothing is known. */
    static String of(Class<?> type, String member) {
        return "";
    }
}
