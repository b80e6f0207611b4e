package foreign;

public class Tree {}
