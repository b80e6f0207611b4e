package wrong.internal.time;

public class KnowsPlan {
    wrong.plan.Plan known;
}
