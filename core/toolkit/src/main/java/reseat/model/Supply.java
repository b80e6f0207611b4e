package reseat.model;

/**
 * A source of power.
 *
 * @param id what files, plans and rules name it by
 * @param name the name people use
 */
public record Supply(String id, String name) {}
