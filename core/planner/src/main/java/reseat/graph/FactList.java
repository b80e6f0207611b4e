package reseat.graph;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Collects the facts that something depends on. */
final class FactList {

    private final StepGraph graph;
    private final Steps steps;

    FactList(StepGraph graph) {
        this.graph = graph;
        steps = graph.steps;
    }

    /** The facts that the goal depends on, or all; joints first, then parts, then supplies. */
    List<Fact> all() {
        List<Fact> all = every();
        if (graph.goal().isPresent()) {
            all.retainAll(relevant());
        }
        return List.copyOf(all);
    }

    /** All facts, whatever the goal is. */
    List<Fact> every() {
        Net net = graph.net;
        List<Fact> all = new ArrayList<>();
        for (int j = 0; j < net.c.nodes; j++) {
            all.add(net.released(j));
        }
        Set<Fact> others = new LinkedHashSet<>(graph.goalFacts());
        for (int j = 0; j < net.c.nodes; j++) {
            steps.conditionsOfRelease(j).forEach(condition -> others.add(condition.fact()));
        }
        for (int p = 0; p < net.c.parts; p++) {
            steps.conditionsOfGoing(p, -1).forEach(condition -> others.add(condition.fact()));
        }
        others.stream().filter(fact -> fact instanceof Fact.Apart).forEach(all::add);
        others.stream().filter(fact -> fact instanceof Fact.Cut).forEach(all::add);
        return all;
    }

    private Set<Fact> relevant() {
        Set<Fact> seen = new LinkedHashSet<>(graph.goalFacts());
        Deque<Fact> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            for (Fact fact : below(open.removeFirst())) {
                if (seen.add(fact)) {
                    open.addLast(fact);
                }
            }
        }
        return seen;
    }

    /** The direct dependencies of a fact. */
    private List<Fact> below(Fact fact) {
        List<Fact> facts = new ArrayList<>();
        if (fact instanceof Fact.Cut cut) {
            steps.isolators(cut.supply()).forEach(j -> facts.add(graph.net.released(j)));
            return facts;
        }
        for (Step step : graph.open(fact)) {
            for (Condition condition : step.conditions()) {
                facts.add(condition.fact());
                facts.addAll(ofCompanions(condition));
            }
        }
        return facts;
    }

    private List<Fact> ofCompanions(Condition condition) {
        List<Fact> facts = new ArrayList<>();
        Set<String> along = new LinkedHashSet<>(condition.orAlong());
        Deque<String> open = new ArrayDeque<>(along);
        while (!open.isEmpty()) {
            int part = graph.net.c.part(open.removeFirst());
            for (Condition own : steps.conditionsOfGoing(part, -1)) {
                facts.add(own.fact());
                own.orAlong().stream().filter(along::add).forEach(open::addLast);
            }
        }
        return facts;
    }
}
