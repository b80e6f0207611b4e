package wrong.internal.planner;

public class AllRight {
    wrong.internal.graph.Nodes nodes;
    wrong.plan.Plan plan;
}
