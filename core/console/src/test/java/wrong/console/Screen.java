package wrong.console;

public class Screen {}
