package wrong.spi;

public class KnowsPlugin {
    wrong.plugins.Family known;
}
