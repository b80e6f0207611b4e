package wrong.plugins;

public class Family {}
