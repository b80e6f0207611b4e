package wrong.testkit;

public class Tester {}
