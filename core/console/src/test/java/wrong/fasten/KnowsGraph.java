package wrong.fasten;

public class KnowsGraph {
    wrong.graph.StepGraph known;
}
