package wrong.model;

public class Device {}
