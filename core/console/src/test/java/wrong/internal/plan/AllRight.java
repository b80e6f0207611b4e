package wrong.internal.plan;

public class AllRight {
    wrong.internal.graph.Nodes nodes;
    wrong.plan.Plan plan;
}
