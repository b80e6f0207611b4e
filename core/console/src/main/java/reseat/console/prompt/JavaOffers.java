package reseat.console.prompt;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import jdk.jshell.JShell;
import jdk.jshell.SourceCodeAnalysis;

/** Completions of Java code. */
final class JavaOffers {

    private final JShell shell;

    JavaOffers(JShell shell) {
        this.shell = shell;
    }

    /** Returns names that fit at the cursor, those of the expected type first. */
    List<Offer> names(String text, int cursor) {
        int[] anchor = {cursor};
        Map<String, Offer> found = new LinkedHashMap<>();
        for (SourceCodeAnalysis.Suggestion suggestion :
                shell.sourceCodeAnalysis().completionSuggestions(text, cursor, anchor)) {
            String name = suggestion.continuation();
            // internal names of the console, and methods of every object
            if (name.startsWith("$") || name.startsWith("REPL")) {
                continue;
            }
            Offer offer = new Offer(anchor[0], name, "", suggestion.matchesType(), "");
            found.merge(name, offer, (a, b) -> a.fits() ? a : b);
        }
        List<Offer> offers = new ArrayList<>(found.values());
        offers.sort(
                Comparator.comparing((Offer offer) -> !offer.fits()).thenComparing(Offer::text));
        return offers;
    }
}
