package wrong.stray;

public class Nowhere {}
