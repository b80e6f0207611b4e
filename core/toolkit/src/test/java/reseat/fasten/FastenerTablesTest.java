package reseat.fasten;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import reseat.given.TestDevice;
import reseat.model.BadInputException;

class FastenerTablesTest {

    private final FastenerTables tables = TestDevice.tables();
    private static final String HEADER = "material,group,rm,shear,source,tag\n";

    @ParameterizedTest
    @EnumSource(FastenerTable.class)
    void namesASourceForEveryRow(FastenerTable table) {
        for (TableRow row : tables.rows(table)) {
            assertTrue(!row.source().isBlank(), row.key());
            assertTrue(
                    List.of("read", "recomputed", "memory", "practice").contains(row.tag()),
                    row.key());
        }
    }

    @Test
    void letsAShopAddAndReplaceRows(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("materials.csv");
        Files.writeString(
                file,
                "\uFEFFmaterial;group;shear;source;tag\nwood;wood;7,5;\"our own; trial\";shop\nmagnesium;magnesium;120;bench;shop\n");
        FastenerTables own = tables.withRows(file);
        assertEquals(7.5, own.material("wood").shear());
        assertEquals("our own; trial", own.material("wood").source());
        assertEquals(120, own.material("magnesium").shear());
        assertEquals(140, tables.material("magnesium").shear());
        assertEquals(
                tables.rows(FastenerTable.MATERIALS).size() + 1,
                own.rows(FastenerTable.MATERIALS).size());
    }

    @Test
    void letsAShopAddAThreadAndUseIt() throws Exception {
        FastenerTables own =
                tables.withRows(
                        "threads.csv",
                        "thread,series,diameterMm,pitchMm,coarse,source,tag\nM1.5,old,1.5,0.35,yes,caliper,shop\n");
        assertEquals(1.5 - 0.649519 * 0.35, own.thread("M1.5").pitchDiameterMm(), 1e-9);
    }

    @Test
    void tellsEveryProblemWithItsPlaceAtOnce() {
        String message =
                message(
                        "shop/materials.csv",
                        HEADER
                                + "# a comment\nwood,wood,,much,mine,shop\ncork,,10,-3,mine,shop\nbalsa,wood,,1,mine,hearsay\nfir,wood,1,2,mine,shop,extra\n");
        assertTrue(
                message.contains("shop/materials.csv:3:12: error: Found \"much\" for shear"),
                message);
        assertTrue(
                message.contains("shop/materials.csv:4:6: error: The cell group is empty"),
                message);
        assertTrue(message.contains("shop/materials.csv:4:10: error: Found -3 for shear"), message);
        assertTrue(
                message.contains("shop/materials.csv:5:20: error: Found \"hearsay\" for tag"),
                message);
        assertTrue(
                message.contains("shop/materials.csv:6:24: error: Found 7 cells, expected 6"),
                message);
    }

    @Test
    void saysWhereAQuoteIsOpen() {
        assertTrue(
                message("shop/materials.csv", HEADER + "a,\"g,,1,s,shop\n")
                        .contains(
                                "shop/materials.csv:2:3: error: The table cannot be read: this"
                                        + " quote is never closed."));
    }

    @Test
    void tellsWrongColumnsAndTables() {
        String column = message("materials.csv", "material,group,shaer,source,tag\n");
        assertTrue(column.contains("no column \"shaer\". Did you mean \"shear\"?"), column);
        assertTrue(column.contains("lacks the column shear"), column);
        String table = message("matter.csv", HEADER);
        assertTrue(table.contains("There is no table \"matter.csv\""), table);
        assertTrue(table.contains("materials.csv"), table);
        assertTrue(
                message("materials.csv", "").contains("The table is empty"),
                message("materials.csv", ""));
    }

    @Test
    void refusesASecondRowOfOneKey() {
        String message = message("materials.csv", HEADER + "a,g,,1,s,shop\na,g,,2,s,shop\n");
        assertTrue(message.contains("materials.csv:3:1: error: A second row for \"a\""), message);
    }

    @Test
    void namesWhatIsKnown() {
        String material = unknown(() -> tables.material("magnesum"));
        assertTrue(
                material.contains("There is no material \"magnesum\". Did you mean \"magnesium\"?"),
                material);
        assertTrue(
                unknown(() -> tables.strengthClass("8.9")).contains("Did you mean \"8.8\""), "8.9");
        assertTrue(
                unknown(() -> tables.friction("greased")).contains("Known: zinc-dry, oiled"),
                "greased");
        assertTrue(unknown(() -> tables.headForm("mushroom")).contains("Known: hex"), "mushroom");
    }

    @Test
    void findsNamesByTheirAliases() {
        assertEquals("magnesium", tables.material("AZ91D").id());
        assertEquals("A2-70", tables.strengthClass("70").id());
        assertEquals("countersunk", tables.headForm("csk"));
    }

    /** ISO 4762 dw as FreeCAD_FastenersWB has it; hex from memory. */
    @Test
    void holdsBearingFaces() {
        double[] socket = {2.72, 3.48, 4.18, 5.07, 6.53, 8.03, 9.38};
        double[] hex = {2.27, 3.07, 4.07, 4.57, 5.88, 6.88, 8.88};
        String[] threads = {"M1.6", "M2", "M2.5", "M3", "M4", "M5", "M6"};
        for (int i = 0; i < threads.length; i++) {
            ScrewThread thread = tables.thread(threads[i]);
            assertEquals(socket[i], tables.headSize("socket", thread).orElseThrow().bearingMm());
            assertEquals(hex[i], tables.headSize("hex", thread).orElseThrow().bearingMm());
        }
        assertEquals(
                0.92 * 5.6,
                tables.headSize("pan", tables.thread("M3")).orElseThrow().bearingMm(),
                1e-9);
    }

    private String message(String file, String text) {
        return String.valueOf(
                assertThrows(BadInputException.class, () -> tables.withRows(file, text))
                        .getMessage());
    }

    private static String unknown(Executable lookUp) {
        return String.valueOf(assertThrows(FastenerInputException.class, lookUp).getMessage());
    }
}
