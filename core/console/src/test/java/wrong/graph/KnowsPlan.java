package wrong.graph;

public class KnowsPlan {
    wrong.plan.Plan[][] known;
}
