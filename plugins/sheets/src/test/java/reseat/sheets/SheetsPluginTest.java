package reseat.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import reseat.files.DeviceFiles;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.planner.Planner;
import reseat.spi.Output;
import reseat.spi.OutputFiles;
import reseat.testkit.PluginContract;

class SheetsPluginTest {

    private static final Path TANSY = Path.of("../../samples/tansy/tansy.yaml");

    private static String written(Output output) throws Exception {
        Device device = DeviceFiles.read(TANSY, Optional.empty(), List.of()).orThrow();
        PlanResult result =
                new Planner().plan(PlanRequest.of(device, new Goal.Free(List.of("sensor"))));
        Plan plan = ((PlanResult.Found) result).plan();
        Map<String, byte[]> files = OutputFiles.of(output, Output.Content.of(plan));
        return new String(files.get(output.fileName()), StandardCharsets.UTF_8);
    }

    @Test
    void keepsTheContract() {
        PluginContract.verify(new SheetsPlugin(), List.of(TANSY));
    }

    @Test
    void cautionsStandBeforeTheActTheyBelongTo() throws Exception {
        String page = written(new HtmlSheet());

        int hazard = page.indexOf("Parts that static electricity damages");
        assertTrue(hazard > 0, page);
        assertTrue(hazard < page.indexOf("Lift off, together: Cell, Board"), page);
        assertTrue(page.contains("0.15\u00a0N\u00b7m (Aldermoor service sheet T-1)"), page);
        assertTrue(page.contains("The maker&#39;s") || page.contains("The maker's service"), page);
    }

    @Test
    void needsAreATable() throws Exception {
        assertEquals(
                "sort,id,name,quantity,unit,order number,why\r\n"
                        + "part,sensor,Light sensor,1,piece,AI-T-05,if it is replaced\r\n",
                written(new NeedsTable()));
    }
}
