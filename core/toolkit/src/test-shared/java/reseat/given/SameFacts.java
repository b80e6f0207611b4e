package reseat.given;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import reseat.model.Device;
import reseat.model.Kind;

/** Compares two devices fact by fact, order included and origins left out. */
public final class SameFacts {

    private SameFacts() {}

    /** Asserts that two devices state the same facts, their kinds, tools and table included. */
    public static void assertSame(Device one, Device other) {
        assertSameActs(one, other);
        same(one.tools(), other.tools());
        for (Kind.Scope scope : Kind.Scope.values()) {
            same(one.kinds(scope), other.kinds(scope));
        }
    }

    /**
     * As {@link #assertSame}, without kinds and tools, which a device made in memory need not
     * register.
     */
    public static void assertSameActs(Device one, Device other) {
        assertEquals(one.id(), other.id());
        assertEquals(one.variant(), other.variant());
        assertEquals(
                List.of(
                        one.name(),
                        one.maker(),
                        one.family(),
                        one.base(),
                        one.hand(),
                        one.usualPosture()),
                List.of(
                        other.name(),
                        other.maker(),
                        other.family(),
                        other.base(),
                        other.hand(),
                        other.usualPosture()));
        assertEquals(one.outline(), other.outline());
        same(one.parts(), other.parts());
        same(one.joints(), other.joints());
        same(one.supplies(), other.supplies());
        same(one.screwTypes(), other.screwTypes());
        same(one.consumables(), other.consumables());
        same(one.hazards(), other.hazards());
        same(one.prepares(), other.prepares());
        same(one.tests(), other.tests());
        assertEquals(one.setup().tools(), other.setup().tools());
        assertEquals(one.setup().postures(), other.setup().postures());
        assertEquals(one.setup().layAsideMs(), other.setup().layAsideMs());
        assertEquals(one.setup().turnOpenMs(), other.setup().turnOpenMs());
        for (String from : one.setup().tools()) {
            for (String to : one.setup().tools()) {
                assertEquals(
                        one.setup().toolChangeMs(from, to), other.setup().toolChangeMs(from, to));
            }
        }
        for (String from : one.setup().postures()) {
            for (String to : one.setup().postures()) {
                assertEquals(
                        one.setup().postureChangeMs(from, to),
                        other.setup().postureChangeMs(from, to));
            }
        }
    }

    private static void same(Map<String, ?> one, Map<String, ?> other) {
        assertEquals(List.copyOf(one.entrySet()), List.copyOf(other.entrySet()));
    }
}
