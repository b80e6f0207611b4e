package reseat.console.prompt;

/** The languages of the console. */
public enum Tongue {
    /** JavaScript. */
    JS("js", "JavaScript", ".js"),
    /** Java. */
    JAVA("java", "Java", ".java");

    private final String word;
    private final String title;
    private final String suffix;

    Tongue(String word, String title, String suffix) {
        this.word = word;
        this.title = title;
        this.suffix = suffix;
    }

    /** Returns the word that switches to it. */
    public String word() {
        return word;
    }

    /** Returns its display name. */
    String title() {
        return title;
    }

    /** Returns the extension of its files. */
    String suffix() {
        return suffix;
    }
}
