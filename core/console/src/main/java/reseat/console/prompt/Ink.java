package reseat.console.prompt;

/** The colours of the console, few and subdued; none if colour is off. */
record Ink(boolean on) {

    String quiet(String words) {
        return paint("2", words);
    }

    String strong(String words) {
        return paint("1", words);
    }

    /** Names that can be used further: results, parts, joints. */
    String name(String words) {
        return paint("36", words);
    }

    String wrong(String words) {
        return paint("33", words);
    }

    private String paint(String code, String words) {
        return on && !words.isEmpty() ? "\u001b[" + code + "m" + words + "\u001b[0m" : words;
    }
}
