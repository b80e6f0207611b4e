package reseat.model;

import java.util.Optional;

/**
 * A tool or a bit.
 *
 * @param id id
 * @param name display name
 * @param handle the handle that the bit fits; changing bits on one handle is faster than changing
 *     tools
 * @param drive the drive that it turns ("T5", "PH00"); empty if it is not a driver
 */
public record Tool(String id, String name, Optional<String> handle, Optional<String> drive) {}
