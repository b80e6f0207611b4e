package wrong.device;

public class Reader {}
