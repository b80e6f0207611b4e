package reseat.console.prompt;

import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.graalvm.polyglot.Value;

/** Completions of JavaScript code, found from types: no user code is run. */
final class JsOffers {

    private static final List<String> WORDS =
            List.of(
                    "const",
                    "let",
                    "function",
                    "for",
                    "if",
                    "else",
                    "while",
                    "return",
                    "new",
                    "of",
                    "throw",
                    "try",
                    "catch",
                    "switch",
                    "case",
                    "typeof",
                    "true",
                    "false",
                    "null",
                    "undefined",
                    "JSON",
                    "Math",
                    "Object",
                    "Array",
                    "Map",
                    "Set",
                    "Number",
                    "String",
                    "RegExp");

    private final Value globals;
    private final Set<String> ours;

    JsOffers(Value globals, Set<String> ours) {
        this.globals = globals;
        this.ours = ours;
    }

    List<Offer> names(String text, int cursor) {
        int start = cursor;
        while (start > 0 && Character.isJavaIdentifierPart(text.charAt(start - 1))) {
            start--;
        }
        String typed = text.substring(start, cursor);
        boolean member = start > 0 && text.charAt(start - 1) == '.';
        List<Offer> offers = new ArrayList<>();
        for (Offer offer : member ? members(text, start) : globalNames(start)) {
            if (offer.text().startsWith(typed)) {
                offers.add(offer);
            }
        }
        return offers;
    }

    private List<Offer> globalNames(int start) {
        List<Offer> offers = new ArrayList<>();
        for (String name : globals.getMemberKeys()) {
            boolean own = !ours.contains(name);
            if (!JsBench.methods().containsKey(name)) {
                offers.add(new Offer(start, name, "", own, own ? "yours" : ""));
            }
        }
        JsBench.methods()
                .forEach(
                        (name, methods) ->
                                offers.add(
                                        new Offer(
                                                start,
                                                call(name, methods),
                                                ApiWords.ofFunction(name),
                                                true,
                                                "")));
        WORDS.forEach(word -> offers.add(Offer.name(start, word, "")));
        offers.sort(Comparator.comparing((Offer o) -> !o.fits()).thenComparing(Offer::text));
        return offers;
    }

    private List<Offer> members(String text, int start) {
        JsChain chain = JsChain.before(text, start - 1);
        Kind kind = new Kinds(globals).of(chain);
        Set<Offer> offers = new LinkedHashSet<>();
        kind.members().forEach((name, says) -> offers.add(Offer.name(start, name, says)));
        return List.copyOf(offers);
    }

    static String call(String name, List<Method> methods) {
        return name + (methods.stream().allMatch(m -> m.getParameterCount() == 0) ? "()" : "(");
    }
}
