package wrong.plan;

public class KnowsSimulate {
    wrong.simulate.Simulator known;
}
