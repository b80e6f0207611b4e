package reseat.files;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.internal.files.Registered;
import reseat.spi.DeviceFamily;

/**
 * An id that device files may name without defining it: a kind, tool, hazard, consumable, posture,
 * supply or prepare act of the built-in data or of a family.
 *
 * @param what what it names, such as "kind of joint" or "tool"
 * @param id the id
 * @param from who defines it: "built-in" or "family" and the family's id; a family's entry that
 *     replaces or extends a built-in one is an entry of its own
 * @param facts its keys as in a device file, in that order: texts, lists and maps; for each time
 *     {@code x} also {@code xMs} in whole milliseconds and {@code xBasis}, how it is known
 */
public record RegisteredId(String what, String id, String from, Map<String, Object> facts) {

    public RegisteredId {
        facts = Collections.unmodifiableMap(new LinkedHashMap<>(facts));
    }

    /**
     * Returns all ids, those of the built-in data first, in the order of their data.
     *
     * @param families the families; one whose data cannot be read is left out, as reading a device
     *     of it reports why
     */
    public static List<RegisteredId> all(List<DeviceFamily> families) {
        return Registered.all(families);
    }
}
