package reseat.model;

/**
 * Something that a rebuild uses up.
 *
 * @param id id
 * @param name display name
 * @param unit the unit it is counted in ("piece", "mm", "ml")
 */
public record Consumable(String id, String name, String unit) {}
