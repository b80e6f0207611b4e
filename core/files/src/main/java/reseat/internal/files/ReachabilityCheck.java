package reseat.internal.files;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import reseat.internal.files.Chain.Link;
import reseat.internal.files.Reachability.Stuck;
import reseat.model.Origin;
import reseat.text.ListText;
import reseat.text.QuoteText;

/**
 * Reports what {@link Reachability} finds, by cause: the one fact without which the most comes
 * apart, the chain or ring of facts to which it belongs, and what follows from it. What is stuck
 * even without it has another cause, reported in turn.
 *
 * <p>To find the fact, each suspect is left out and the analysis repeated; large devices get fewer
 * attempts. If several facts do as well, the one that fewer others resemble is reported.
 */
final class ReachabilityCheck {

    /** How many causes are reported. */
    private static final int CAUSES = 8;

    /** How many consequences are named. */
    private static final int NAMED = 6;

    /** Attempts at one cause. */
    private static final int ATTEMPTS = 60;

    /** Attempts times the square of the number of parts. */
    private static final int EFFORT = 3_000_000;

    private final Draft draft;
    private final Places places;
    private final Problems problems;
    private final Numbered all;

    ReachabilityCheck(Draft draft, Numbered all, Places places, Problems problems) {
        this.draft = draft;
        this.places = places;
        this.problems = problems;
        this.all = all;
    }

    /** What the analysis finds when a fact is left out. */
    private record Attempt(Doubt doubt, int alike, Numbered rest, List<Stuck> stuck) {

        static final Comparator<Attempt> ORDER =
                Comparator.<Attempt>comparingInt(attempt -> attempt.stuck.size())
                        .thenComparingInt(Attempt::alike);
    }

    void run() {
        Numbered facts = all;
        Reachability reach = new Reachability(facts);
        List<Stuck> stuck = reach.everythingComesApart() ? List.of() : reach.stuck();
        for (int cause = 0; cause < CAUSES && !stuck.isEmpty(); cause++) {
            Attempt best = best(facts, reach, stuck);
            report(best, reach, stuck, cause == 0 && best.stuck.isEmpty());
            facts = best.rest;
            reach = new Reachability(facts);
            stuck = best.stuck;
        }
        if (!stuck.isEmpty()) {
            problems.error(
                    places.at(""), "more can never come apart, for other reasons: " + named(stuck));
        }
    }

    private Attempt best(Numbered facts, Reachability reach, List<Stuck> stuck) {
        Map<Link, Integer> counts = new LinkedHashMap<>();
        for (Stuck each : stuck) {
            Chain.of(each, draft, reach)
                    .suspects()
                    .forEach(link -> counts.merge(link, 1, Integer::sum));
        }
        int parts = facts.parts.size();
        int attempts = Math.max(1, Math.min(ATTEMPTS, EFFORT / (parts * parts)));
        Optional<Attempt> best = Optional.empty();
        Set<Origin> tried = new HashSet<>();
        List<Link> suspects = new ArrayList<>(counts.keySet());
        suspects.sort(Comparator.comparing(link -> -Objects.requireNonNull(counts.get(link))));
        for (Link link : suspects) {
            Doubt doubt = new Doubt(link, draft, places);
            if (tried.size() < attempts && tried.add(doubt.at())) {
                Attempt attempt = attempt(doubt, facts);
                if (best.isEmpty() || Attempt.ORDER.compare(attempt, best.get()) < 0) {
                    best = Optional.of(attempt);
                }
            }
        }
        return best.orElseThrow();
    }

    private Attempt attempt(Doubt doubt, Numbered facts) {
        Numbered rest = doubt.leftOut(facts);
        return new Attempt(doubt, doubt.alike(facts), rest, new Reachability(rest).stuck());
    }

    private void report(Attempt cause, Reachability reach, List<Stuck> stuck, boolean everything) {
        Link wrong = cause.doubt.link();
        Stuck about = wrong.about();
        Set<String> left = new HashSet<>();
        cause.stuck.forEach(each -> left.add(key(each)));
        List<Stuck> follow =
                stuck.stream()
                        .filter(each -> !left.contains(key(each)))
                        .filter(each -> !key(each).equals(key(about)))
                        .toList();
        Chain chain = Chain.of(about, draft, reach);
        String text = impossible(about, reach) + ": " + chain.words();
        if (!follow.isEmpty()) {
            text +=
                    ". And "
                            + follow.size()
                            + (follow.size() == 1 ? " that follows: " : " that follow: ")
                            + named(follow)
                            + ". Without "
                            + (chain.links().size() == 1 ? "this" : QuoteText.of(wrong.words()))
                            + " "
                            + (everything ? "everything" : "these")
                            + " would come apart";
        }
        problems.error(cause.doubt.at(), text);
    }

    private static String key(Stuck stuck) {
        return (stuck.joint() ? "j" : "p") + stuck.id();
    }

    private static String impossible(Stuck stuck, Reachability reach) {
        if (stuck.joint()) {
            return "joint " + stuck.id() + " can never be released";
        }
        return reach.canMove(stuck.id())
                ? "parts " + stuck.from() + " and " + stuck.id() + " can never be separated"
                : "part " + stuck.id() + " can never be moved";
    }

    /** Names some; the joints of one entry together. */
    private static String named(List<Stuck> some) {
        Map<String, List<String>> entries = new LinkedHashMap<>();
        for (Stuck each : some) {
            int dot = each.joint() ? each.id().lastIndexOf('.') : -1;
            entries.computeIfAbsent(
                            dot < 0 ? key(each) : "j" + each.id().substring(0, dot + 1),
                            key -> new ArrayList<>())
                    .add(each.id());
        }
        int named = 0;
        List<String> words = new ArrayList<>();
        for (List<String> ids : entries.values()) {
            if (words.size() < NAMED) {
                words.add(ListText.ids(ids));
                named += ids.size();
            }
        }
        int more = some.size() - named;
        return more == 0
                ? ListText.and(words)
                : String.join(", ", words) + " and " + more + " more";
    }
}
