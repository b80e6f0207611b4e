package wrong.internal.planner;

public class KnowsFiles {
    wrong.files.Reader known;
}
