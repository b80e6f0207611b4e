package wrong.internal.graph;

public class Nodes {}
