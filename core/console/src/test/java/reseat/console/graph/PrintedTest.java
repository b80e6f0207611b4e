package reseat.console.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import reseat.given.Toy;
import reseat.graph.StepGraph;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;

/** The graph as text and as Graphviz DOT. */
class PrintedTest {

    private static final Device DEVICE =
            Toy.of(
                    "part lid",
                    "part board under lid spare shield",
                    "part shield",
                    "joint lid-1 holds lid frame tool t5 or spudger",
                    "joint lid-2 holds lid frame tool t5 or spudger",
                    "joint cell-plug holds board frame under lid cuts cell",
                    "joint link holds board frame cuts cell under lid",
                    "joint snap holds shield board under lid needs cell",
                    "joint screw holds board frame under lid needs cell tool t5");

    private static final Goal BOARD = new Goal.Free(List.of("board"));

    private static StepGraph graph() {
        return StepGraph.of(DEVICE, State.closed(), Rules.none());
    }

    @Test
    void towardsAGoal() {
        assertTrue(
                StepText.of(graph().towards(BOARD))
                        .startsWith(
                                """
                                Step graph of toy, towards: free board

                                Every way needs 6 steps. After = the steps just before it.

                                  no  step               how            after
                                   1  release lid-1/2    t5 or spudger  -
                                   2  move lid           hand           1
                                   3  release cell-plug  hand           2
                                """),
                () -> StepText.of(graph().towards(BOARD)));
        assertTrue(
                StepText.of(graph().towards(BOARD))
                        .endsWith(
                                """
                                free board
                                ├ cell-plug released  [hand]
                                │ └ lid goes  [hand] away from frame
                                │   └ lid-1/2 released  [t5 or spudger]
                                ├ link released  [hand]
                                │ └ lid goes  [hand] away from frame  ^
                                ├ screw released  [t5]
                                │ ├ lid goes  [hand] away from frame  ^
                                │ └ cell cut
                                │   ├ cell-plug released  [hand]  ^
                                │   └ or link released, for nothing more
                                ├ board goes  [hand] away from frame
                                │ ├ cell-plug released  [hand]  ^
                                │ ├ link released  [hand]  ^
                                │ ├ snap released  [hand]  (or shield along)
                                │ │ ├ lid goes  [hand] away from board  ^
                                │ │ └ cell cut  ^
                                │ ├ screw released  [t5]  ^
                                │ └ lid goes  [hand] away from board  ^
                                └ left behind: lid
                                """),
                () -> StepText.of(graph().towards(BOARD)));
    }

    @Test
    void everythingAndNoWay() {
        String all = StepText.of(graph());
        assertTrue(all.contains("4 parts, 6 joints in 5 nodes."), all);
        assertTrue(
                all.contains("  screw  [t5] on frame\n    lid and frame apart\n    cell cut\n"),
                all);
        assertTrue(
                all.contains("  board and shield  [hand]\n    snap holds shield and board\n"), all);
        Rules rules = Rules.none().forbidParts(List.of("lid"));
        String none = StepText.of(StepGraph.of(DEVICE, State.closed(), rules).towards(BOARD));
        assertTrue(none.contains("There is no way:\n  - board cannot be freed"), none);
        State open = new State(Set.of(), List.of());
        assertTrue(
                StepText.of(
                                StepGraph.of(DEVICE, open, Rules.none())
                                        .towards(new Goal.Reach("lid-1")))
                        .endsWith("Nothing needs to be done.\n"));
    }

    @Test
    void isTheSameEachTime() {
        assertEquals(StepText.of(graph()), StepText.of(graph()));
        assertEquals(StepDot.of(graph().towards(BOARD)), StepDot.of(graph().towards(BOARD)));
    }

    @Test
    void isSoundDot() {
        State open = new State(Set.of("lid-1", "lid-2"), List.of(Set.of("lid")));
        for (StepGraph graph :
                List.of(
                        graph(),
                        graph().towards(BOARD),
                        graph().towards(new Goal.Teardown()),
                        StepGraph.of(DEVICE, open, Rules.none()))) {
            parse(StepDot.of(graph));
        }
    }

    @Test
    void showsPlacesNeededWorksAndAlternatives() {
        String dot = StepDot.of(graph().towards(BOARD));
        assertTrue(
                dot.contains("\"move lid\" [shape=folder, label=\"lid\\nhand\", style=filled"),
                dot);
        assertTrue(dot.contains("\"fact: cell cut\" [shape=ellipse, label=\"cell cut\"]"), dot);
        assertTrue(dot.contains("\"release cell-plug\" -> \"fact: cell cut\""), dot);
        assertTrue(dot.contains("label=\"on frame\""), dot);
        State open = new State(Set.of("lid-1", "lid-2"), List.of(Set.of("lid")));
        String half = StepDot.of(StepGraph.of(DEVICE, open, Rules.none()));
        assertTrue(half.contains("label=\"in the device\""), half);
    }

    /** Statements as the language knows them; each edge joins nodes that are stated. */
    private static void parse(String dot) {
        String string = "\"(?:[^\"\\\\]|\\\\.)*\"";
        String attributes = " \\[(?:[a-z]+=(?:" + string + "|[A-Za-z0-9.]+)(?:, )?)+\\]";
        Pattern node = Pattern.compile("(" + string + ")" + attributes);
        Pattern edge =
                Pattern.compile("(" + string + ") -> (" + string + ")(?:" + attributes + ")?");
        Pattern set =
                Pattern.compile(
                        "(?:graph|node|edge)"
                                + attributes
                                + "|label="
                                + string
                                + "(?:; [a-z]+=(?:"
                                + string
                                + "|[a-z]+))*");
        Set<String> nodes = new HashSet<>();
        int depth = 0;
        for (String raw : dot.split("\n")) {
            String line = raw.strip();
            Matcher isNode = node.matcher(line);
            Matcher isEdge = edge.matcher(line);
            if (line.equals("}")) {
                depth--;
            } else if (line.matches("digraph steps \\{|subgraph cluster_[a-z]+[0-9]+ \\{")) {
                depth++;
            } else if (isEdge.matches()) {
                assertTrue(nodes.contains(isEdge.group(1)), line);
                assertTrue(nodes.contains(isEdge.group(2)), line);
            } else if (isNode.matches()) {
                assertTrue(nodes.add(isNode.group(1)), "twice: " + line);
            } else {
                assertTrue(set.matcher(line).matches(), line);
            }
        }
        assertEquals(0, depth);
    }
}
