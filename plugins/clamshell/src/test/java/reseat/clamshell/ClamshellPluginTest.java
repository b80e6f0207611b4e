package reseat.clamshell;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.testkit.PluginContract;

class ClamshellPluginTest {

    @Test
    void keepsTheContract() {
        PluginContract.verify(
                new ClamshellPlugin(), List.of(Path.of("../../samples/quill/quill.yaml")));
    }
}
