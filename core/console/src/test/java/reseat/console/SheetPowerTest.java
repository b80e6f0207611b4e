package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.files.DeviceFiles;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Signal;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.planner.Planner;
import reseat.sheet.Need;
import reseat.sheet.Sheet;
import reseat.sheet.Step;

/** What a sheet says about work on a live device and about charge that is stored in it. */
class SheetPowerTest {

    private static final String LAMP =
            """
            format: reseat-device/1
            id: lamp
            name: Lamp
            base: tub
            supplies: {cell: {name: Main cell}}
            kinds: {parts: {capacitor: {title: capacitor, storesCharge: true}}}
            parts:
              tub: {name: Tub, kind: frame}
              lid: {name: Lid, kind: cover}
              cell: {name: Cell, kind: cell, under: [lid]}
              flash: {name: Flash capacitor, kind: capacitor, under: [lid]}
            joints:
              lid-clip: {kind: clip, holds: [lid, tub]}
              cell-plug: {kind: wire-plug, holds: [cell, tub], under: [lid], cuts: [cell]}
              cell-clip: {kind: clip, holds: [cell, tub], under: [lid], needs: []}
              flash-clip: {kind: clip, holds: [flash, tub], under: [lid], needs: [cell]}
            """;

    @TempDir Path folder;

    private Sheet sheet(String target) throws Exception {
        return sheet(LAMP, target);
    }

    private Sheet sheet(String text, String target) throws Exception {
        Path file = folder.resolve("lamp.yaml");
        Files.writeString(file, text);
        Device device = DeviceFiles.read(file, Optional.empty(), List.of()).orThrow();
        PlanResult result =
                new Planner().plan(PlanRequest.of(device, new Goal.Free(List.of(target))));
        return Sheet.of(((PlanResult.Found) result).plan());
    }

    @Test
    void aWaiverOfPowerFirstIsACautionAtTheHead() throws Exception {
        Sheet sheet = sheet("cell");

        assertTrue(
                sheet.head().cautions().stream()
                        .anyMatch(
                                caution ->
                                        caution.signal() == Signal.WARNING
                                                && caution.text().contains("Cell clip")
                                                && caution.text().contains("Main cell ON")),
                sheet.head().cautions().toString());
        assertEquals(
                List.of(0),
                sheet.head().cautions().stream().map(c -> c.step()).distinct().toList());
    }

    @Test
    void storedChargeIsMeasuredAfterItIsUncoveredAndBeforeItIsTouched() throws Exception {
        Sheet sheet = sheet("flash");
        List<Step> steps = sheet.steps().toList();

        int lid = at(steps, "move:lid");
        int touched = at(steps, "release:flash-clip");
        List<Step> checks =
                steps.subList(lid + 1, touched).stream()
                        .filter(step -> step.kind() == Step.Kind.CHECK)
                        .filter(step -> step.text().contains("Flash capacitor"))
                        .toList();
        assertEquals(1, checks.size(), steps.toString());
        assertTrue(checks.get(0).text().contains("60\u00a0V"), checks.toString());
        assertTrue(checks.get(0).details().toString().contains("IEC 60204-1"), checks.toString());
        assertTrue(
                sheet.needs().stream().anyMatch(need -> need.kind() == Need.Kind.INSTRUMENT),
                sheet.needs().toString());
    }

    @Test
    void theLooseEndOfAnIsolatorIsCoveredAndUncoveredAgain() throws Exception {
        List<Step> steps = sheet("flash").steps().toList();

        int cut = at(steps, "release:cell-plug");
        assertTrue(steps.get(cut).details().toString().contains("tape over"), steps.toString());
        Step closing =
                steps.subList(cut + 1, steps.size()).stream()
                        .filter(step -> step.acts().toString().contains("release:cell-plug"))
                        .findFirst()
                        .orElseThrow();
        assertTrue(closing.details().toString().contains("Take the cap or tape off"));
    }

    @Test
    void aMoveThatCutsASupplySaysSo() throws Exception {
        String contacts =
                LAMP.replace("cell-plug: {kind: wire-plug", "cell-plug: {kind: contact-block")
                        .replaceAll(" *cell-clip: .*\n", "");
        Sheet sheet = sheet(contacts, "flash");
        List<Step> steps = sheet.steps().toList();

        int out = at(steps, "move:cell");
        assertTrue(
                steps.get(out)
                        .details()
                        .contains("Lets go with it: Cell plug. This cuts Main cell."),
                steps.toString());
        List<Step> back = steps.subList(out + 1, steps.size());
        assertTrue(
                back.get(at(back, "move:cell")).details().contains("Wipe the contacts dry."),
                back.toString());
        String words = sheet.head().entries().toString();
        assertTrue(
                words.contains("Cut: Main cell (step\u00a0" + steps.get(out).number() + ")"),
                words);
        assertTrue(
                sheet.needs().stream().anyMatch(need -> need.kind() == Need.Kind.INSULATION),
                sheet.needs().toString());
        assertTrue(
                steps.stream().noneMatch(s -> s.acts().toString().contains("release:cell-plug")));
    }

    @Test
    void anOldCellIsPackedByTheRulesOfTransport() throws Exception {
        assertTrue(sheet("cell").checks().toString().contains("special provision 377"));
        assertTrue(!sheet("flash").checks().toString().contains("special provision 377"));
    }

    private static int at(List<Step> steps, String act) {
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).acts().stream().anyMatch(id -> id.startsWith(act))) {
                return i;
            }
        }
        throw new AssertionError("no step does " + act + ": " + steps);
    }
}
