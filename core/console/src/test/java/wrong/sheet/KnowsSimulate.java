package wrong.sheet;

public class KnowsSimulate {
    wrong.simulate.Simulator known;
}
