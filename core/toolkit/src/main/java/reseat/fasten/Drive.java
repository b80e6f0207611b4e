package reseat.fasten;

/**
 * A drive: a recess of a screw or the tip of a driver.
 *
 * @param id printed designation, such as T5, PH00, JIS-S0, H1.5, 5L0.8
 * @param system id of the system, such as hexalobular, cross-h
 * @param size number or measured width, as written
 * @param title its name in words
 */
public record Drive(String id, String system, String size, String title) {}
