package wrong.plugins;

public class KnowsInside {
    wrong.internal.graph.Nodes known;
}
