package wrong.files;

public class Reader {}
