package reseat.console.prompt;

import java.util.List;
import reseat.script.ApiIndex;
import reseat.script.Bench;

/** First sentences of the documentation of the toolkit. */
final class ApiWords {

    private static final String BENCH = Bench.class.getName();

    private ApiWords() {}

    /** Returns a short description of a member; empty if unknown. */
    static String of(Class<?> type, String member) {
        String name = type.getCanonicalName();
        return name == null ? "" : first(ApiIndex.standard().member(name, member));
    }

    /** Returns the description of a function of the bench. */
    static String ofFunction(String name) {
        return first(ApiIndex.standard().member(BENCH, name));
    }

    private static String first(List<ApiIndex.Entry> entries) {
        return entries.isEmpty() ? "" : shortened(entries.get(0).summary());
    }

    static String shortened(String words) {
        String plain = words.endsWith(".") ? words.substring(0, words.length() - 1) : words;
        return plain.startsWith("Returns ") ? plain.substring(8) : plain;
    }

    /**
     * Returns the full name of a type of the toolkit, as a class loader expects it; else the name.
     */
    static String full(String shortName) {
        String bare = shortName.replaceFirst("<.*", "");
        return ApiIndex.standard().find(bare).stream()
                .filter(entry -> entry.member().isEmpty())
                .map(
                        entry ->
                                entry.type()
                                                .substring(
                                                        0,
                                                        entry.type().length()
                                                                - entry.shortType().length())
                                        + entry.shortType().replace('.', '$'))
                .findFirst()
                .orElse(bare);
    }
}
