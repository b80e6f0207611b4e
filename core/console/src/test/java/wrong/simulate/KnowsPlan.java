package wrong.simulate;

public class KnowsPlan {
    wrong.plan.Plan known;
}
