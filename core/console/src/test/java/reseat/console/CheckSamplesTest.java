package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The faults seeded in one sample variant are found, and there is no false alarm on the devices
 * that are meant to be clean.
 */
class CheckSamplesTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "drive-mismatch",
                "torque-above-limit",
                "given-cut-depth-unsafe",
                "wrong-screw-possible",
                "under-engagement"
            })
    void findsEverySeededFault(String check) {
        Ran ran = Ran.reseat("check", sample("sorrel"), "--variant", "misfit");

        assertEquals(1, ran.code(), ran.err());
        assertTrue(ran.out().contains("[" + check + "]"), ran.out());
    }

    @ParameterizedTest
    @CsvSource({"sorrel,", "sorrel,lte"})
    void findsNothingOnCleanVariants(String device, String variant) {
        Ran ran =
                Ran.reseat("check", sample(device), "--variant", variant == null ? "lte" : variant);

        assertEquals(0, ran.code(), ran.out() + ran.err());
        assertTrue(ran.out().endsWith(": nothing found\n"), ran.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"quill", "bramble", "tansy"})
    void findsNothingOnCleanDevices(String device) {
        Ran ran = Ran.reseat("check", sample(device));

        assertEquals(0, ran.code(), ran.out() + ran.err());
        assertTrue(ran.out().endsWith(": nothing found\n"), ran.out());
    }

    @Test
    void saysWhichDriverTheShopLacks() {
        Ran ran = Ran.reseat("check", sample("tansy"), "--drives", "T6", "--from", "note");

        assertEquals(1, ran.code(), ran.err());
        assertTrue(ran.out().contains("PH0"), ran.out());
    }

    private static String sample(String device) {
        return "../../samples/" + device + "/" + device + ".yaml";
    }
}
