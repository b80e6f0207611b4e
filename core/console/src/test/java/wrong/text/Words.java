package wrong.text;

public class Words {}
