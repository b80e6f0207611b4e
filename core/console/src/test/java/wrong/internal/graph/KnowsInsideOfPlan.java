package wrong.internal.graph;

public class KnowsInsideOfPlan {
    wrong.internal.planner.AllRight known;
}
