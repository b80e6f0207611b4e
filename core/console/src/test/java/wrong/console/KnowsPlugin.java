package wrong.console;

public class KnowsPlugin {
    wrong.plugins.Family known;
}
