package wrong.simulate;

public class Simulator {}
