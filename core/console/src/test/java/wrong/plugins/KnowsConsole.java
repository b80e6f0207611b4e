package wrong.plugins;

public class KnowsConsole {
    wrong.console.Screen known;
}
