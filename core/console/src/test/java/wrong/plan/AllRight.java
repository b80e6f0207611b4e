package wrong.plan;

public class AllRight {
    wrong.model.Device device;
    wrong.graph.StepGraph graph;
    wrong.text.Words words;
}
