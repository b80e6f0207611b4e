package wrong.internal.text;

public class Words {}
