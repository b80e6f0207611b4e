package wrong.spi;

public class KnowsConsole {
    wrong.console.Screen known;
}
