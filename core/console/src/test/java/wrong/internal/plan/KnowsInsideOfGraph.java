package wrong.internal.plan;

public class KnowsInsideOfGraph {
    wrong.internal.graph.Nodes known;
}
