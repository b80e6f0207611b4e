package wrong.testkit;

public class KnowsConsole {
    wrong.console.Screen known;
}
