package reseat.model;

import java.util.Optional;

/**
 * A tool or a bit.
 *
 * @param id what files, plans and rules name it by
 * @param name the name people use
 * @param handle the handle that the bit fits; bits on one handle are changed faster than tools
 * @param drive the drive that it turns ("T5", "PH00"); empty for what is no driver
 */
public record Tool(String id, String name, Optional<String> handle, Optional<String> drive) {}
