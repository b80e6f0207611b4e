package wrong.spi;

public class KnowsTestKit {
    wrong.testkit.Tester known;
}
