package reseat.model;

/**
 * A source of power.
 *
 * @param id id
 * @param name the name people use
 */
public record Supply(String id, String name) {}
