package wrong.internal.graph;

public class KnowsInsideOfPlan {
    wrong.internal.plan.AllRight known;
}
