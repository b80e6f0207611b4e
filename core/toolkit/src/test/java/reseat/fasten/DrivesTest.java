package reseat.fasten;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.fasten.DriverFit.Verdict;
import reseat.given.TestDevice;

/** Drives (facts 7). */
class DrivesTest {

    private final FastenerTables tables = TestDevice.tables();
    private final Drives drives = tables.drives();

    /** ISO 10664, nbk1560.com technical-19. */
    @ParameterizedTest
    @CsvSource({
        "T3, 1.20, 0.85",
        "T4, 1.35, 1.00",
        "T5, 1.50, 1.10",
        "T6, 1.75, 1.27",
        "T8, 2.40, 1.75",
        "T10, 2.80, 2.05",
        "T15, 3.35, 2.40",
        "T20, 3.95, 2.85",
        "T25, 4.50, 3.25",
        "T30, 5.60, 4.05",
        "T40, 6.75, 4.85"
    })
    void holdsHexalobularSizes(String drive, double a, double b) {
        assertEquals(a, drives.acrossMm(drives.drive(drive)).orElseThrow());
        assertEquals(b, row(drive).required("withinMm"));
    }

    /** JIS B 1012:1985, kikakurui.com B1012: g and b of H. */
    @ParameterizedTest
    @CsvSource({
        "PH0, 0.81, 0.605",
        "PH1, 1.27, 0.965",
        "PH2, 2.29, 1.47",
        "PH3, 3.81, 2.41",
        "PH4, 5.08, 3.48"
    })
    void holdsCrossSizes(String drive, double g, double b) {
        assertEquals(g, row(drive).required("acrossMm"));
        assertEquals(b, row(drive).required("withinMm"));
    }

    /** Size by screw: FreeCAD_FastenersWB FsData, neji-trivia.jp p=1593, mpi-inox.odoo.com. */
    @ParameterizedTest
    @CsvSource({
        "pan, M2, ISO 14583, T6",
        "pan, M2.5, ISO 14583, T8",
        "pan, M3, ISO 14583, T10",
        "pan, M3.5, ISO 14583, T15",
        "cheese, M4, ISO 14580, T20",
        "raised-countersunk, M5, ISO 14584, T25",
        "countersunk, M6, ISO 14581, T30",
        "pan, M10, ISO 14583, T50",
        "pan, M1.6, ISO 7045 H, PH0",
        "pan, M2, ISO 7045 H, PH0",
        "pan, M2.5, ISO 7045 H, PH1",
        "pan, M3, ISO 7045 H, PH1",
        "pan, M3.5, ISO 7045 H, PH2",
        "pan, M4, ISO 7045 Z, PZ2",
        "countersunk, M6, ISO 7046 H, PH3",
        "pan, M8, ISO 7045 H, PH4",
        "pan, M2, DIN 7985 Z, PZ1",
        "pan, M3, DIN 7985 Z, PZ1",
        "pan, M2, JIS B 1111 annex, PH1",
        "pan, M3, JIS B 1111 annex, PH2",
        "pan, M8, JIS B 1111 annex, PH3",
        "truss, M4, JIS B 1111 truss, PH2",
        "pan, M1.4, JCIS precision, JIS0",
        "socket, M1.6, ISO 4762, H1.5",
        "socket, M2.5, ISO 4762, H2",
        "socket, M3, ISO 4762, H2.5",
        "socket, M8, ISO 4762, H6",
        "button, M3, ISO 7380-1, H2",
        "button, M8, ISO 7380-1, H5",
        "countersunk, M2, ISO 10642, H1.3",
        "countersunk, M4, ISO 10642, H2.5",
        "low-cap, M5, DIN 7984, H3",
        "set, M3, ISO 4026-4029, H1.5",
        "set, M8, ISO 4026-4029, H4",
        "cheese, M1.6, ISO 1207, SL0.4",
        "cheese, M3, ISO 1207, SL0.8",
        "cheese, M6, ISO 1207, SL1.6"
    })
    void knowsTheDriveOfAScrew(String head, String thread, String standard, String drive) {
        assertTrue(
                drives.byScrew(Optional.of(head), tables.thread(thread)).stream()
                        .anyMatch(
                                r ->
                                        r.text("standard").equals(standard)
                                                && r.text("drive").equals(drive)));
    }

    /** Least widths of slots, ISO 1207, FreeCAD_FastenersWB iso1207def (facts 7d). */
    @ParameterizedTest
    @CsvSource({
        "M1.6, 0.46",
        "M2, 0.56",
        "M2.5, 0.66",
        "M3, 0.86",
        "M3.5, 1.06",
        "M4, 1.26",
        "M5, 1.26",
        "M6, 1.66"
    })
    void holdsLeastWidthsOfSlots(String thread, double least) {
        TableRow row = byScrew("ISO 1207", thread);
        assertEquals(least, row.required("recessAcrossMm"));
        double nominal = drives.acrossMm(drives.drive(row.text("drive"))).orElseThrow();
        assertEquals(nominal + 0.06, least, 1e-9);
    }

    /** Diameters m of cross recesses, ISO 7045, FreeCAD_FastenersWB iso7045def (facts 7b). */
    @ParameterizedTest
    @CsvSource({
        "M1.6, 1.7, 1.6",
        "M2, 1.9, 2.1",
        "M2.5, 2.7, 2.6",
        "M3, 3.0, 2.8",
        "M3.5, 3.9, 3.9",
        "M4, 4.4, 4.3",
        "M5, 4.9, 4.7",
        "M6, 6.9, 6.7"
    })
    void holdsDiametersOfCrossRecesses(String thread, double h, double z) {
        assertEquals(h, byScrew("ISO 7045 H", thread).required("recessAcrossMm"));
        assertEquals(z, byScrew("ISO 7045 Z", thread).required("recessAcrossMm"));
    }

    /** Mean penetration t, ISO 14583, FreeCAD_FastenersWB iso14583def (facts 7a). */
    @ParameterizedTest
    @CsvSource({
        "M2, 0.70",
        "M2.5, 0.975",
        "M3, 1.14",
        "M3.5, 1.2",
        "M4, 1.465",
        "M5, 1.715",
        "M6, 2.22"
    })
    void holdsPenetrationOfHexalobularRecesses(String thread, double depth) {
        assertEquals(depth, byScrew("ISO 14583", thread).required("recessDepthMm"));
    }

    /** Least depth t of hexagon sockets, ISO 4762, FreeCAD_FastenersWB iso4762def (facts 7c). */
    @ParameterizedTest
    @CsvSource({
        "M1.6, 0.7",
        "M2, 1.0",
        "M2.5, 1.1",
        "M3, 1.3",
        "M4, 2.0",
        "M5, 2.5",
        "M6, 3.0",
        "M8, 4.0"
    })
    void holdsDepthsOfSockets(String thread, double depth) {
        assertEquals(depth, byScrew("ISO 4762", thread).required("recessDepthMm"));
    }

    /** Greatest depth f of the flare, nbk1560.com technical-19 (facts 7a). */
    @ParameterizedTest
    @CsvSource({
        "T3, 0.114",
        "T4, 0.13",
        "T5, 0.22",
        "T6, 0.35",
        "T8, 0.48",
        "T10, 0.56",
        "T15, 0.67",
        "T20, 0.79",
        "T25, 0.90",
        "T30, 1.12",
        "T40, 1.18"
    })
    void holdsFlares(String drive, double flare) {
        assertEquals(flare, row(drive).required("flareMm"));
    }

    /** Angles of cross H, JIS B 1012:1985, kikakurui.com B1012 (facts 7b); No. 0 has no beta. */
    @ParameterizedTest
    @CsvSource({"PH0, 7, NaN", "PH1, 7, 138", "PH2, 5.75, 140", "PH3, 5.75, 146", "PH4, 7, 153"})
    void holdsAnglesOfTheCross(String drive, double alpha, double beta) {
        assertEquals(alpha, row(drive).required("alphaDegrees"));
        assertEquals(beta, row(drive).number("betaDegrees").orElse(Double.NaN));
    }

    /** Every row of the tables of facts 7a to 7c that was read; "-" where they have none. */
    @ParameterizedTest
    @CsvSource({
        "ISO 14583, pan, T, - 6 8 10 15 20 25 30 45 50",
        "ISO 14580, cheese, T, - 6 8 10 15 20 25 30 45 50",
        "ISO 14584, raised-countersunk, T, - 6 8 10 15 20 25 30 45 50",
        "ISO 14581, countersunk, T, - 6 8 10 ? 20 25 30 45 50",
        "ISO 7045 H, pan, PH, 0 0 1 1 2 2 2 3 4 ?",
        "ISO 7045 Z, pan, PZ, 0 0 1 1 2 2 2 3 4 ?",
        "ISO 7046 H, countersunk, PH, 0 0 1 1 2 2 2 3 4 ?",
        "ISO 7046 Z, countersunk, PZ, 0 0 1 1 2 2 2 3 4 ?",
        "DIN 7985 Z, pan, PZ, - 1 1 1 - 2 2 3 - -",
        "JIS B 1111 annex, pan, PH, - 1 1 2 2 2 2 3 3 -",
        "JIS B 1111 annex, countersunk, PH, - 1 1 2 2 2 2 3 3 -",
        "JIS B 1111 truss, truss, PH, - 1 1 1 2 2 2 3 3 -",
        "ISO 4762, socket, H, 1.5 1.5 2 2.5 - 3 4 5 6 -",
        "ISO 7380-1, button, H, - - - 2 - 2.5 3 4 5 -",
        "ISO 10642, countersunk, H, - 1.3 1.5 2 - 2.5 3 4 5 -",
        "DIN 7984, low-cap, H, - - - 2 - 2.5 3 4 5 -",
        "ISO 4026-4029, set, H, 0.7 0.9 1.3 1.5 - 2 2.5 3 4 -",
        "ISO 1207, cheese, SL, 0.4 0.5 0.6 0.8 1 1.2 1.2 1.6 ? ?"
    })
    void holdsEveryRowOfTheTablesByScrew(
            String standard, String head, String prefix, String sizes) {
        String[] threads = {"M1.6", "M2", "M2.5", "M3", "M3.5", "M4", "M5", "M6", "M8", "M10"};
        List<String> all = List.of(sizes.split(" ", -1));
        for (int i = 0; i < threads.length; i++) {
            String thread = threads[i];
            List<String> found =
                    tables.rows(FastenerTable.DRIVE_BY_SCREW).stream()
                            .filter(r -> r.text("standard").equals(standard))
                            .filter(r -> r.text("head").equals(head))
                            .filter(r -> r.text("thread").equals(thread))
                            .map(r -> r.text("drive"))
                            .toList();
            if (!all.get(i).equals("?")) {
                assertEquals(
                        all.get(i).equals("-") ? List.of() : List.of(prefix + all.get(i)),
                        found,
                        standard + " " + thread);
            }
        }
    }

    /** A row that spells a drive in its own way would never be found by its name. */
    @Test
    void namesDrivesByTheirIds() {
        for (FastenerTable table :
                List.of(FastenerTable.DRIVE_BY_SCREW, FastenerTable.DRIVE_TORQUES)) {
            for (TableRow row : tables.rows(table)) {
                assertEquals(row.text("drive"), drives.drive(row.text("drive")).id(), row.key());
            }
        }
    }

    private TableRow byScrew(String standard, String thread) {
        return tables.rows(FastenerTable.DRIVE_BY_SCREW).stream()
                .filter(r -> r.text("standard").equals(standard))
                .filter(r -> r.text("thread").equals(thread))
                .findFirst()
                .orElseThrow();
    }

    /** The key difference: M3 is No. 1 in ISO and No. 2 in JIS, M2 0 and 1, M8 4 and 3. */
    @Test
    void tellsIsoFromJisRecesses() {
        for (String[] row :
                new String[][] {{"M3", "PH1", "PH2"}, {"M2", "PH0", "PH1"}, {"M8", "PH4", "PH3"}}) {
            assertEquals(row[1], byStandard("ISO 7045 H", row[0]));
            assertEquals(row[2], byStandard("JIS B 1111 annex", row[0]));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "T5, T5, FITS",
        "T4, T5, LOOSE",
        "T3, T5, BLOCKED",
        "T6, T5, BLOCKED",
        "TR8, T8, FITS",
        "T8, TR8, BLOCKED",
        "TR8, TR8, FITS",
        "IP6, T6, BLOCKED",
        "T6, IP6, LOOSE",
        "IP5, T6, CAMS_OUT",
        "PH1, PH1, FITS",
        "PH0, PH1, CAMS_OUT",
        "PH00, PH0, CAMS_OUT",
        "PH000, PH0, BLOCKED",
        "PH2, PH1, BLOCKED",
        "PH1, PZ1, CAMS_OUT",
        "PZ1, PH1, CAMS_OUT",
        "PH0, JIS-S0, CAMS_OUT",
        "JIS-S0, PH0, LOOSE",
        "PH1, JIS1, CAMS_OUT",
        "JIS1, PH1, FITS",
        "PH0, JIS0, CAMS_OUT",
        "H1.5, H1.5, FITS",
        "H1.3, H1.5, CAMS_OUT",
        "H2, H1.5, BLOCKED",
        "5L0.8, 5L0.8, FITS",
        "5L0.8, 5L1.2, CAMS_OUT",
        "T3, 5L1.2, CAMS_OUT",
        "5L1.2, T5, BLOCKED",
        "TW1.5, TW1.5, FITS",
        "SL2, PH1, CAMS_OUT",
        "SL0.6, SL0.8, LOOSE",
        "PH00, TW2.0, CAMS_OUT",
        "H1.5, T6, CAMS_OUT",
        "T5, PH0, BLOCKED"
    })
    void judgesDriversInRecesses(String driver, String recess, Verdict verdict) {
        DriverFit fit = drives.fit(drives.drive(driver), drives.drive(recess));
        assertEquals(verdict, fit.verdict(), fit.toString());
        assertTrue(!fit.why().isBlank() && !fit.source().isBlank());
    }

    /**
     * A narrower width of the same system turns from half the width on; a hexagon jams in six lobes
     * from three quarters of 1.75 mm, which are 1.3125 mm, to all of it.
     */
    @ParameterizedTest
    @CsvSource({
        "H0.74, H1.5, BLOCKED",
        "H0.75, H1.5, CAMS_OUT",
        "H1.31, T6, BLOCKED",
        "H1.32, T6, CAMS_OUT",
        "H1.75, T6, CAMS_OUT",
        "H1.76, T6, BLOCKED"
    })
    void aNarrowDriverTurnsOnlyWithinLimits(String driver, String recess, Verdict verdict) {
        assertEquals(verdict, drives.fit(drives.drive(driver), drives.drive(recess)).verdict());
    }

    @ParameterizedTest
    @CsvSource({
        "T6, T5, the driver is too large",
        "T3, T5, the driver is too small to touch",
        "T5, PH0, the forms differ"
    })
    void saysWhyADriverDoesNotGo(String driver, String recess, String why) {
        DriverFit fit = drives.fit(drives.drive(driver), drives.drive(recess));
        assertEquals(why, fit.why());
        assertFalse(fit.good());
    }

    @Test
    void aDriverIsGoodWhereItFits() {
        assertTrue(drives.fit(drives.drive("T5"), drives.drive("T5")).good());
        assertFalse(drives.fit(drives.drive("T4"), drives.drive("T5")).good(), "loose is not good");
    }

    @Test
    void offersNoDriverThatDoesNotGo() {
        List<DriverFit> offered = drives.drivers(drives.drive("T5"));
        assertEquals("T5", offered.get(0).driver().id());
        assertTrue(offered.stream().noneMatch(f -> f.verdict() == Verdict.BLOCKED));
        assertTrue(offered.stream().anyMatch(f -> f.driver().id().equals("T4")));
    }

    @Test
    void looksOnlyAtTheHeadThatIsAskedFor() {
        ScrewThread m3 = tables.thread("M3");
        List<String> pan = heads(drives.byScrew(Optional.of("pan"), m3));
        assertEquals(List.of("pan"), pan);
        assertTrue(heads(drives.byScrew(Optional.empty(), m3)).contains("countersunk"));
    }

    private static List<String> heads(List<TableRow> rows) {
        return rows.stream()
                .map(row -> row.text("head"))
                .filter(head -> !head.equals("any"))
                .distinct()
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "t5, T5",
        "TX8, T8",
        "TR8, TR8",
        "PH00, PH00",
        "ph1, PH1",
        "JIS-S0, JIS-S0",
        "S-cross 0, JIS-S0",
        "JIS0, JIS0",
        "JIS-H1, JIS1",
        "hex 1.5, H1.5",
        "H1.5, H1.5",
        "H2.0, H2",
        "five-lobe 0.8, 5L0.8",
        "five-lobe-0.8, 5L0.8",
        "tri-wing 1.5, TW1.5",
        "TW0.9, TW0.9",
        "slot 3.2, SL3.2",
        "IP6, IP6"
    })
    void readsTheSpellingsOfDrives(String text, String id) {
        assertEquals(id, drives.drive(text).id());
    }

    @Test
    void namesTheDrivesItKnows() {
        String message =
                String.valueOf(
                        assertThrows(FastenerInputException.class, () -> drives.drive("T11"))
                                .getMessage());
        assertTrue(message.contains("There is no drive \"T11\""), message);
        assertTrue(message.contains("Did you mean"), message);
        assertTrue(message.contains("T10"), message);
    }

    /** Torque ranges of the trade, from memory: indicative. */
    @Test
    void knowsWhatDriversStand() {
        assertEquals(0.43, drives.capacityNm(drives.drive("T5")).orElseThrow());
        assertEquals(2.2, drives.capacityNm(drives.drive("TR8")).orElseThrow());
        assertTrue(drives.capacityNm(drives.drive("5L0.8")).isEmpty());
    }

    @Test
    void listsTheDriversOfARecessBestFirst() {
        assertEquals("JIS-S0", drives.drivers(drives.drive("JIS-S0")).get(0).driver().id());
        assertTrue(
                drives.drivers(drives.drive("JIS-S0")).stream()
                        .anyMatch(
                                f ->
                                        f.driver().id().equals("PH0")
                                                && f.verdict() == Verdict.CAMS_OUT));
    }

    private String byStandard(String standard, String thread) {
        return drives.byScrew(Optional.of("pan"), tables.thread(thread)).stream()
                .filter(r -> r.text("standard").equals(standard))
                .map(r -> r.text("drive"))
                .findFirst()
                .orElseThrow();
    }

    private TableRow row(String drive) {
        return tables.rows(FastenerTable.DRIVES).stream()
                .filter(r -> r.text("drive").equals(drive))
                .findFirst()
                .orElseThrow();
    }
}
