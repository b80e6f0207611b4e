package reseat.handheld;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.testkit.PluginContract;

class HandheldPluginTest {

    @Test
    void keepsTheContract() {
        PluginContract.verify(
                new HandheldPlugin(), List.of(Path.of("../../samples/bramble/bramble.yaml")));
    }
}
