package reseat.model;

/**
 * A source of power.
 *
 * @param id id
 * @param name display name
 */
public record Supply(String id, String name) {}
