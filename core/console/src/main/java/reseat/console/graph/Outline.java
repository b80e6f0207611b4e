package reseat.console.graph;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import reseat.graph.Fact;
import reseat.graph.Needed;
import reseat.graph.Step;
import reseat.graph.StepGraph;
import reseat.graph.Work;
import reseat.model.Goal;
import reseat.text.ListText;

/**
 * The part of a graph that is worth showing for a goal. Of the steps that reach a fact, only the
 * one that needs the fewest works besides what every way needs is expanded; the others are named
 * with what they need in addition. The graph of everything is expanded completely.
 */
final class Outline {

    private final StepGraph graph;
    private final Needed needed;
    private final Set<Work> always;
    private final boolean whole;

    /** A collapsed way to reach a fact. */
    record Folded(String label, int more) {}

    Outline(StepGraph graph) {
        this.graph = graph;
        needed = graph.needed();
        always = new LinkedHashSet<>(needed.works());
        whole = graph.goal().isEmpty();
    }

    /** The facts to start from, without the separations from parts {@link #aside}. */
    List<Fact> roots() {
        return graph.goalFacts().stream().filter(fact -> !small(fact)).toList();
    }

    /** Parts that a target must not take along when it leaves the base; they need no mention. */
    List<String> aside() {
        Set<String> parts = new LinkedHashSet<>();
        for (Fact fact : graph.goalFacts()) {
            if (small(fact) && fact instanceof Fact.Apart apart) {
                parts.add(target(apart.part()) ? apart.other() : apart.part());
            }
        }
        return List.copyOf(parts);
    }

    private boolean target(String part) {
        return graph.goal().orElse(null) instanceof Goal.Free free && free.targets().contains(part);
    }

    private boolean small(Fact fact) {
        return fact instanceof Fact.Apart
                && !fromBase(fact)
                && graph.goal().orElse(null) instanceof Goal.Free
                && graph.goalFacts().stream().anyMatch(this::fromBase);
    }

    private boolean fromBase(Fact fact) {
        String base = graph.device().base();
        return fact instanceof Fact.Apart apart
                && (apart.part().equals(base) || apart.other().equals(base));
    }

    /** The steps that serve; of the parts that may go, those that do not go too late. */
    private List<Step> open(Fact fact) {
        return graph.alternatives(fact).stream()
                .filter(step -> step.standing() == Step.Standing.OPEN)
                .toList();
    }

    /** The steps that reach a fact and are unfolded; several only if they differ in tools alone. */
    List<Step> unfolded(Fact fact) {
        List<Step> open = open(fact);
        if (whole || open.size() < 2) {
            return open;
        }
        Step best = open.stream().min(Comparator.comparing(this::more)).orElseThrow();
        return open.stream().filter(step -> sameJoints(step, best) || step.equals(best)).toList();
    }

    private static boolean sameJoints(Step step, Step other) {
        return step instanceof Step.ByWay one
                && other instanceof Step.ByWay two
                && one.joints().equals(two.joints());
    }

    List<Folded> folded(Fact fact) {
        List<Step> unfolded = unfolded(fact);
        return open(fact).stream()
                .filter(step -> !unfolded.contains(step))
                .map(step -> new Folded(label(step), more(step)))
                .distinct()
                .toList();
    }

    private static String label(Step step) {
        return step instanceof Step.ByWay way
                ? ListText.ids(way.joints()) + " released"
                : ((Step.Going) step).part() + " goes";
    }

    /** How many works a step needs besides those that every way to the goal needs. */
    int more(Step step) {
        if (!needed.possible()) {
            return 0;
        }
        return (int)
                graph.mustComeBefore(step).all().stream()
                        .filter(work -> !always.contains(work))
                        .count();
    }
}
