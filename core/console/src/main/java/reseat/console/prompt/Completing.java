package reseat.console.prompt;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.jline.reader.Candidate;
import org.jline.reader.Completer;
import org.jline.reader.LineReader;
import org.jline.reader.ParsedLine;

/** Completes input: console commands and code. */
final class Completing implements Completer {

    private static final Duration PATIENCE = Duration.ofSeconds(2);

    private static final int LONGEST = 60;

    private final Console console;
    private final Tongue tongue;

    Completing(Console console, Tongue tongue) {
        this.console = console;
        this.tongue = tongue;
    }

    @Override
    public void complete(LineReader reader, ParsedLine line, List<Candidate> candidates) {
        int sort = 0;
        for (Offer offer : offers(line.line(), line.cursor())) {
            candidates.add(
                    new Candidate(
                            offer.text(),
                            offer.text(),
                            null,
                            offer.says().isEmpty() ? null : shortened(offer.says()),
                            null,
                            null,
                            false,
                            sort++));
        }
    }

    private static String shortened(String words) {
        return words.length() <= LONGEST ? words : words.substring(0, LONGEST - 1) + "…";
    }

    /** Returns the completions at a position of a text. */
    List<Offer> offers(String text, int cursor) {
        Spot spot = Spot.of(text, cursor);
        TextOffers quoted = new TextOffers(console.bench(), console.folder());
        if (spot.quoted()) {
            return quoted.of(spot);
        }
        String line = text.substring(0, cursor);
        if (line.startsWith("follow ") || line.startsWith("keep ")) {
            int start = line.indexOf(' ') + 1;
            return quoted.files(new Spot(start, line.substring(start), true, "", 0));
        }
        List<Offer> offers = new ArrayList<>();
        if (line.equals(spot.word())) {
            for (Words.Word word : Words.all()) {
                if (word.text().startsWith(spot.word()) && !spot.word().isEmpty()) {
                    offers.add(Offer.name(spot.start(), word.text(), word.does()));
                }
            }
        }
        for (Offer offer :
                console.session()
                        .ask(tongue, PATIENCE, List.<Offer>of(), l -> l.offers(text, cursor))) {
            if (offers.stream().noneMatch(known -> known.text().equals(offer.text()))) {
                offers.add(offer);
            }
        }
        return offers;
    }
}
