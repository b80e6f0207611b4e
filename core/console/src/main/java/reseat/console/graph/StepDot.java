package reseat.console.graph;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import reseat.graph.Condition;
import reseat.graph.Fact;
import reseat.graph.Step;
import reseat.graph.StepGraph;
import reseat.graph.Work;
import reseat.text.ListText;

/**
 * Prints a step graph in the language of Graphviz. What comes first is on the left. A release is a
 * note with its joints and tools, the going of a part a folder; both need all that points to them.
 * Where any one of several will do, they meet in a small circle. Works that every way to the goal
 * needs are filled. Boxes collect what happens at one place and on one part.
 */
public final class StepDot {

    private static final String LOOK =
            "  graph [rankdir=LR, ranksep=0.55, nodesep=0.14, fontname=\"Helvetica\", fontsize=13,"
                    + " labelloc=t, labeljust=l, pad=0.3]\n"
                    + "  node [fontname=\"Helvetica\", fontsize=11, color=\"#34515e\", margin=\"0.10,0.05\","
                    + " height=0.3]\n"
                    + "  edge [color=\"#6b7f88\", arrowsize=0.6, fontname=\"Helvetica\", fontsize=9]\n";
    private static final String FACT = "fact: ";
    private static final String LEGEND =
            "filled: every way needs it   ellipse: any one will do   dashed: or what is named comes along";
    private static final String NEEDED = ", style=filled, fillcolor=\"#dcebe4\"";

    private final StepGraph graph;
    private final Outline outline;
    private final Set<Work> needed;
    private final Map<String, Map<String, String>> clusters = new LinkedHashMap<>();
    private final Map<String, String> circles = new LinkedHashMap<>();
    private final Map<String, Map<String, String>> edges = new LinkedHashMap<>();
    private final Set<Object> drawn = new LinkedHashSet<>();

    private StepDot(StepGraph graph) {
        this.graph = graph;
        outline = new Outline(graph);
        needed = new LinkedHashSet<>(graph.goal().isPresent() ? graph.needed().works() : List.of());
    }

    /** Prints a graph; lines end with a line feed. */
    public static String of(StepGraph graph) {
        StepDot dot = new StepDot(graph);
        if (graph.goal().isPresent()) {
            dot.goal(graph.goal().get().toString());
        } else {
            graph.facts().forEach(dot::source);
        }
        return dot.text();
    }

    private void goal(String goal) {
        circles.put("goal", "shape=box, peripheries=2, label=" + quoted(goal));
        for (Fact fact : outline.roots()) {
            edge(source(fact), "goal", "");
        }
    }

    /** Draws a fact with all that leads to it and returns the node that stands for it. */
    private String source(Fact fact) {
        List<Step> steps = outline.unfolded(fact);
        List<Outline.Folded> folded = outline.folded(fact);
        List<String> sources = new ArrayList<>();
        if (fact instanceof Fact.Released released) {
            return release(released);
        }
        if (fact instanceof Fact.Cut) {
            Set<Fact.Released> isolators = new LinkedHashSet<>();
            steps.forEach(step -> isolators.add(new Fact.Released(((Step.ByWay) step).joints())));
            isolators.forEach(isolator -> sources.add(release(isolator)));
        } else {
            steps.forEach(step -> sources.add(leaving((Step.Going) step)));
        }
        if (fact instanceof Fact.Apart && sources.size() == 1 && folded.isEmpty()) {
            return sources.get(0);
        }
        String id = FACT + fact.label();
        if (drawn.add(fact)) {
            circles.put(
                    id,
                    fact instanceof Fact.Cut
                            ? "shape=ellipse, label=" + quoted(fact.label())
                            : "shape=ellipse, fontsize=9, label=" + quoted("or: " + fact.label()));
            sources.forEach(from -> edge(from, id, ""));
            for (Outline.Folded other : folded) {
                String stub = id + " " + other.label();
                circles.put(
                        stub,
                        "shape=plaintext, fontcolor=\"#6b7f88\", fontsize=9, label="
                                + quoted(other.label() + "\n" + other.more() + " more"));
                edge(stub, id, "style=dashed");
            }
        }
        return id;
    }

    private String release(Fact.Released fact) {
        String id = "release " + fact.joints().get(0);
        if (drawn.add(fact)) {
            List<Step> steps = outline.unfolded(fact);
            Set<String> tools = new LinkedHashSet<>();
            steps.forEach(step -> tools.add(tool(step)));
            String how = tools.isEmpty() ? "no way" : ListText.or(tools);
            node(
                    graph.device().joint(fact.joints().get(0)).site(),
                    id,
                    "shape=note, label="
                            + quoted(ListText.ids(fact.joints()) + "\n" + how)
                            + mark(new Work.Release(fact.joints())));
            if (!steps.isEmpty()) {
                steps.get(0)
                        .conditions()
                        .forEach(condition -> edge(source(condition.fact()), id, ""));
            }
        }
        return id;
    }

    private String leaving(Step.Going step) {
        String id = "move " + step.part();
        if (drawn.add(id)) {
            node(
                    step.part(),
                    id,
                    "shape=folder, label="
                            + quoted(step.part() + "\n" + tool(step))
                            + mark(new Work.MoveOf(step.part())));
            for (Condition condition : graph.going(step.part()).orElse(step).conditions()) {
                edge(source(condition.fact()), id, along(condition));
            }
        }
        return id;
    }

    private static String along(Condition condition) {
        return condition.orAlong().isEmpty()
                ? ""
                : "style=dashed, label=" + quoted("or " + ListText.ids(condition.orAlong()));
    }

    private String mark(Work work) {
        return needed.contains(work) ? NEEDED : "";
    }

    private String tool(Step step) {
        return step.posture().equals(graph.device().usualPosture())
                ? step.tool()
                : step.tool() + ", " + step.posture();
    }

    private void node(String part, String id, String look) {
        clusters.computeIfAbsent(part, key -> new LinkedHashMap<>()).put(id, look);
    }

    private void edge(String from, String to, String look) {
        if (!from.equals(to)) {
            edges.computeIfAbsent(from, key -> new LinkedHashMap<>()).putIfAbsent(to, look);
        }
    }

    /** Tells whether an edge says nothing new: what it asks for is asked for on the way. */
    private boolean idle(String from, String to) {
        Deque<String> open = new ArrayDeque<>(firm(from));
        open.remove(to);
        Set<String> seen = new LinkedHashSet<>(open);
        while (!open.isEmpty()) {
            for (String next : firm(open.removeFirst())) {
                if (next.equals(to)) {
                    return true;
                }
                if (seen.add(next)) {
                    open.addLast(next);
                }
            }
        }
        return false;
    }

    /** What waits for a node whatever else is done. */
    private List<String> firm(String from) {
        return edges.getOrDefault(from, Map.of()).entrySet().stream()
                .filter(edge -> edge.getValue().isEmpty() && !edge.getKey().startsWith(FACT))
                .map(Map.Entry::getKey)
                .toList();
    }

    private void edges(StringBuilder out) {
        edges.forEach(
                (from, tos) ->
                        tos.forEach(
                                (to, look) -> {
                                    String arrow = quoted(from) + " -> " + quoted(to);
                                    if (!look.isEmpty()) {
                                        line(out, "  ", arrow + " [" + look + "]");
                                    } else if (!idle(from, to)) {
                                        line(out, "  ", arrow);
                                    }
                                }));
    }

    private String text() {
        StringBuilder out = new StringBuilder("digraph steps {\n").append(LOOK);
        out.append("  label=")
                .append(quoted("Step graph of " + graph.device() + "\n" + LEGEND))
                .append("\n");
        int number = 0;
        List<List<String>> places = graph.places();
        boolean several = places.size() > 1;
        for (List<String> place : places) {
            String indent = several ? "    " : "  ";
            if (several) {
                out.append("  subgraph cluster_place").append(number++).append(" {\n");
                out.append("    label=").append(quoted(placeName(place)));
                out.append("; style=rounded; color=\"#34515e\"\n");
            }
            for (String part : place) {
                number = cluster(out, part, indent, number);
            }
            if (several) {
                out.append("  }\n");
            }
        }
        circles.forEach((id, look) -> line(out, "  ", quoted(id) + " [" + look + "]"));
        edges(out);
        return out.append("}\n").toString();
    }

    private int cluster(StringBuilder out, String part, String indent, int number) {
        Map<String, String> nodes = clusters.getOrDefault(part, Map.of());
        if (nodes.size() < 2) {
            nodes.forEach((id, look) -> line(out, indent, quoted(id) + " [" + look + "]"));
            return number;
        }
        line(out, indent, "subgraph cluster_part" + number + " {");
        line(out, indent, "  label=" + quoted("on " + part) + "; style=filled; color=\"#f4f1ea\"");
        nodes.forEach((id, look) -> line(out, indent + "  ", quoted(id) + " [" + look + "]"));
        line(out, indent, "}");
        return number + 1;
    }

    private String placeName(List<String> place) {
        return place.contains(graph.device().base())
                ? "in the device"
                : "aside: " + ListText.ids(place);
    }

    private static void line(StringBuilder out, String indent, String text) {
        out.append(indent).append(text).append('\n');
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n") + '"';
    }
}
