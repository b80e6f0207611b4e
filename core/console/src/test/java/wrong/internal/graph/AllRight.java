package wrong.internal.graph;

public class AllRight {
    wrong.model.Device device;
    wrong.graph.StepGraph graph;
}
