package reseat.spi;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ToolkitVersionTest {

    @Test
    void isFilledInByTheBuild() {
        String version = ToolkitVersion.current();

        assertTrue(version.matches("\\d+\\.\\d+\\.\\d+(-SNAPSHOT)?"), version);
    }

    @Test
    void runsInsideTheNamedModule() {
        assertTrue(ToolkitVersion.class.getModule().isNamed());
    }
}
