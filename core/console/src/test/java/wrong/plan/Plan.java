package wrong.plan;

public class Plan {}
