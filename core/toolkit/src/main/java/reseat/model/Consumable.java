package reseat.model;

/**
 * Something that a rebuild uses up.
 *
 * @param id what files, plans and rules name it by
 * @param name the name people use
 * @param unit the unit it is counted in ("piece", "mm", "ml")
 * @param flammable whether it burns until it has dried, such as a solvent
 */
public record Consumable(String id, String name, String unit, boolean flammable) {}
