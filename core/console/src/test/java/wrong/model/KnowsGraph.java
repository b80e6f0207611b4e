package wrong.model;

public class KnowsGraph {
    wrong.graph.StepGraph known;
}
