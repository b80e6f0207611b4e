package reseat.internal.files;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import reseat.internal.files.Reachability.Obstacle;
import reseat.internal.files.Reachability.Stuck;
import reseat.model.Joint;
import reseat.text.ListText;

/**
 * Why something is stuck: the facts from it to the last one, or to a ring of facts.
 *
 * @param links the facts, each about what the one before names
 * @param ring number of the link with which the ring begins; the number of links if there is none
 */
record Chain(List<Link> links, int ring) {

    /** A fact: what it is about, and what is in its way. */
    record Link(Stuck about, Obstacle obstacle) {

        /** Returns the fact as a sentence without its full stop. */
        String words() {
            return about.id() + " " + obstacle.how() + " " + obstacle.words();
        }
    }

    /** Follows the first obstacle to each thing that is stuck. */
    static Chain of(Stuck start, Draft draft, Reachability reach) {
        List<Link> links = new ArrayList<>();
        List<Stuck> seen = new ArrayList<>();
        Stuck at = start;
        while (!seen.contains(at)) {
            Obstacle obstacle = obstacle(at, draft, reach);
            links.add(new Link(at, obstacle));
            seen.add(at);
            switch (obstacle.fact()) {
                case NO_ISOLATOR, MANNER -> {
                    return new Chain(links, links.size());
                }
                case HOLD, STRAIN -> at = new Stuck(obstacle.of(), true, draft.base);
                case NEED -> at = new Stuck(isolator(obstacle.of(), draft), true, draft.base);
                case LETS_GO ->
                        at = new Stuck(obstacle.of(), false, other(at.id(), obstacle, draft));
                default -> at = cover(at, obstacle.of(), draft);
            }
        }
        return new Chain(links, seen.indexOf(at));
    }

    private static Obstacle obstacle(Stuck at, Draft draft, Reachability reach) {
        return at.joint()
                ? reach.obstacleTo(Objects.requireNonNull(draft.joints.get(at.id())))
                : reach.obstacleTo(Objects.requireNonNull(draft.parts.get(at.id())), at.from());
    }

    /** Returns a part that a joint holds besides the one that is to be moved. */
    private static String other(String joint, Obstacle obstacle, Draft draft) {
        return Objects.requireNonNull(draft.joints.get(joint)).holds().stream()
                .filter(part -> !part.equals(obstacle.of()))
                .findFirst()
                .orElseThrow();
    }

    private static String isolator(String supply, Draft draft) {
        return draft.joints.values().stream()
                .filter(joint -> joint.cuts().contains(supply))
                .findFirst()
                .orElseThrow()
                .id();
    }

    /** What has to be separated now; the base never moves, so what it hides has to. */
    private static Stuck cover(Stuck at, String cover, Draft draft) {
        String from = at.id();
        if (at.joint()) {
            Joint joint = Objects.requireNonNull(draft.joints.get(at.id()));
            from = joint.site();
        }
        return cover.equals(draft.base)
                ? new Stuck(from, false, cover)
                : new Stuck(cover, false, from);
    }

    /** Returns the facts of which one is wrong: those of the ring, or all where there is none. */
    List<Link> suspects() {
        return links.subList(ring < links.size() ? ring : 0, links.size());
    }

    /** Returns the facts in words, and the ring in short. */
    String words() {
        Set<String> facts = new LinkedHashSet<>();
        links.forEach(link -> facts.add(link.words()));
        String text = ListText.and(facts);
        if (ring == links.size()) {
            return text;
        }
        List<String> ids = new ArrayList<>();
        suspects().forEach(link -> ids.add(link.about().id()));
        ids.add(ids.get(0));
        return text + " (" + String.join(" → ", ids) + ")";
    }
}
