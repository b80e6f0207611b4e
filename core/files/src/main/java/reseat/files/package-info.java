/**
 * Device files: reading them, writing a device out with everything resolved, and the JSON Schema of
 * the format.
 *
 * <p>Example:
 *
 * <pre>{@code
 * Reading reading = DeviceFiles.read(Path.of("slate.yaml"), Optional.of("lte"), List.of());
 * reading.problems().forEach(System.err::println);
 * reading.device().map(ResolvedJson::write).ifPresent(System.out::println);
 * }</pre>
 */
@NullMarked
package reseat.files;

import org.jspecify.annotations.NullMarked;
