package wrong.time;

public class KnowsPlan {
    wrong.plan.Plan known;
}
