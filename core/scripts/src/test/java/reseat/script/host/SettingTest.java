package reseat.script.host;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Parameters of checks as people set them. */
class SettingTest {

    @Test
    void namesCheckParameterAndValue() {
        assertEquals(new Setting("a-b", "nearMm", "0.3"), Setting.of("a-b.nearMm=0.3"));
    }

    @Test
    void aValueMayHoldAnything() {
        assertEquals(new Setting("a", "b", "c.d=e"), Setting.of("a.b=c.d=e"));
        assertEquals(new Setting("a", "b", ""), Setting.of("a.b="));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a", "a.b", "a=b", ".b=c", "a.=c", "=c", "a=b.c"})
    void whatIsWrittenOtherwiseIsRefused(String text) {
        assertEquals(
                "found \""
                        + text
                        + "\", expected CHECK.NAME=VALUE, such as"
                        + " protrusion-into-hazard.nearMm=0.3",
                assertThrows(IllegalArgumentException.class, () -> Setting.of(text)).getMessage());
    }
}
