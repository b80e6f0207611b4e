package wrong.graph;

public class StepGraph {}
