package wrong.internal.planner;

public class KnowsSimulate {
    wrong.simulate.Simulator known;
}
