package reseat.slate;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.testkit.PluginContract;

class SlatePluginTest {

    @Test
    void keepsTheContract() {
        PluginContract.verify(
                new SlatePlugin(), List.of(Path.of("../../samples/sorrel/sorrel.yaml")));
    }
}
