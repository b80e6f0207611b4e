package reseat.console.fuzz;

/** What is read. */
enum Format {
    YAML(".yaml"),
    JSON(".json"),
    RESOLVED(".json"),
    CSV(".csv"),
    PLAN(".json"),
    STATE(".yaml"),
    JOB(".yaml"),
    KNOWN(".yaml"),
    UNITS(".txt"),
    COMMAND(".txt");

    final String ending;

    Format(String ending) {
        this.ending = ending;
    }
}
