package reseat.fasteners.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Threads, heads, recesses, bosses and torques that cannot belong together; bonds. */
class BelongTogetherTest {

    private static final String HEAD = "headDiameter: 4 mm, headHeight: 1.6 mm, drive: T6";

    @Test
    void hasNothingToSayOfASoundTin() {
        assertEquals(List.of(), Tin.found());
    }

    @ParameterizedTest
    @CsvSource({"M2.5", "M1.6", "M3", "ST2"})
    void findsASeatWithAnotherThread(String thread) {
        assertEquals(
                List.of("seat-thread-differs ERROR /joints/lid-screw"),
                only(
                        "seat-thread-differs",
                        "seat: {form: insert,",
                        "seat: {thread: " + thread + ", form: insert,"));
    }

    @Test
    void findsASeatWithAnotherPitch() {
        assertEquals(
                List.of("seat-thread-differs ERROR /joints/lid-screw"),
                only(
                        "seat-thread-differs",
                        "m2: {thread: M2x0.4",
                        "m2: {thread: M8x1",
                        "seat: {form: insert,",
                        "seat: {thread: M8, form: insert,"));
    }

    @Test
    void acceptsTheSameThreadWrittenInAnotherWay() {
        assertEquals(
                List.of(), Tin.found("seat: {form: insert,", "seat: {thread: M2, form: insert,"));
    }

    @Test
    void findsAFormingScrewWhereAThreadIsAndAMachineScrewWhereNoneIs() {
        assertEquals(
                List.of("seat-thread-differs ERROR /joints/foot-screw"),
                only("seat-thread-differs", "form: formed", "form: tapped"));
        assertEquals(
                List.of("seat-thread-differs WARNING /joints/foot-screw"),
                only("seat-thread-differs", "screw: st", "screw: m2"));
    }

    @ParameterizedTest
    @CsvSource({
        "30 mm, 1.6 mm, T6, head-implausible ERROR",
        "2 mm, 1.6 mm, PH00, head-implausible ERROR",
        "6.5 mm, 1.6 mm, T6, head-implausible WARNING",
        "4 mm, 6 mm, T6, head-implausible WARNING",
        "2.6 mm, 1.6 mm, T10, recess-implausible ERROR",
        "3.4 mm, 1.6 mm, T10, recess-implausible WARNING",
        "4.2 mm, 1.6 mm, T10, recess-implausible WARNING",
        "4 mm, 1.6 mm, TR10, recess-implausible WARNING",
        "4 mm, 1.6 mm, PH2, recess-implausible ERROR",
        "4 mm, 1.6 mm, H4, recess-implausible ERROR",
        "4 mm, 1.6 mm, T1, ''",
        "4 mm, 1.6 mm, PH1, ''",
        "4 mm, 1.6 mm, T8, ''",
        "3.2 mm, 1 mm, T5, ''",
    })
    void judgesHeadsAndRecesses(String head, String height, String drive, String finding) {
        List<String> found =
                Tin.found(
                                HEAD,
                                "headDiameter: "
                                        + head
                                        + ", headHeight: "
                                        + height
                                        + ", drive: "
                                        + drive,
                                "kind: screw\n    holds: [lid, tray]",
                                "kind: screw\n    ways: {usual: {kind: unscrew, tool: hand}}\n    holds: [lid, tray]")
                        .stream()
                        .filter(f -> f.contains("-implausible"))
                        .toList();
        assertEquals(
                finding.isEmpty() ? List.of() : List.of(finding + " /screwTypes/m2"),
                found.stream()
                        .filter(f -> !f.startsWith("head") || finding.startsWith("head"))
                        .toList());
    }

    @ParameterizedTest
    @CsvSource({"1.8, ERROR", "2.6, WARNING", "3, ''"})
    void findsAnInsertWithoutAWall(double outer, String severity) {
        assertEquals(
                severity.isEmpty()
                        ? List.of()
                        : List.of("boss-wall-thin " + severity + " /joints/lid-screw"),
                Tin.found("bossOuter: 4,", "bossOuter: " + outer + ","));
    }

    @ParameterizedTest
    @CsvSource({"3.6, 1", "4, 0"})
    void findsAPlasticBossThatIsTooThin(double outer, int findings) {
        assertEquals(
                findings, only("boss-wall-thin", "bossOuter: 4.4", "bossOuter: " + outer).size());
    }

    @Test
    void findsACountersunkScrewInPlasticButNotInAnInsert() {
        assertEquals(
                List.of("countersunk-in-plastic WARNING /joints/foot-screw"),
                only(
                        "countersunk-in-plastic",
                        "st: {thread: ST2, length: 6 mm, head: pan",
                        "st: {thread: ST2, length: 6 mm, head: countersunk"));
        assertEquals(
                List.of(),
                only(
                        "countersunk-in-plastic",
                        "m2: {thread: M2x0.4, length: 4 mm, head: pan",
                        "m2: {thread: M2x0.4, length: 4 mm, head: countersunk"));
    }

    @ParameterizedTest
    @CsvSource({"0.018 N·m, 1", "0.03 N·m, 1", "0.1 N·m, 0", "0.18 N·m, 0"})
    void findsATorqueThatIsAFractionOfTheNeed(String torque, int findings) {
        assertEquals(
                findings,
                only("torque-below-need", "torque: 0.18 N·m", "torque: " + torque).size());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[{of: cleaner, quantity: 6, unit: ml}] | 1",
                "[] | 1",
                "[{of: edge-adhesive, quantity: 20, unit: mm}] | 1",
                "[{of: edge-adhesive, quantity: 90, unit: mm}] | 0"
            })
    void findsABondThatIsMadeWithoutAdhesive(String consumes, int findings) {
        assertEquals(
                findings,
                only(
                                "bond-without-adhesive",
                                "consumes: [{of: edge-adhesive, quantity: 100, unit: mm}, {of: cleaner, quantity: 6, unit: ml}]",
                                "consumes: " + consumes)
                        .size());
    }

    @Test
    void findsATapeThatIsNotRenewed() {
        assertEquals(
                List.of("bond-without-adhesive WARNING /joints/board-tape"),
                only(
                        "bond-without-adhesive",
                        "board-tape: {kind: tape,",
                        "board-tape: {kind: tape, ways: {usual: {kind: peel, consumes: []}},"));
    }

    @Test
    void findsABondThatIsCutWithoutKeepOuts() {
        String keepOuts =
                "keepOuts: {flex: {part: glass, outline: [[40, 20], [50, 20], [50, 30]]}}";
        assertEquals(
                List.of("bond-without-keep-outs WARNING /joints/glass-bond"),
                Tin.found(keepOuts, "keepOuts: {}"));
        assertEquals(
                List.of("bond-without-keep-outs WARNING /joints/glass-bond"),
                Tin.found("flex: {part: glass", "x: {part: board"),
                "the one cable that hangs on it is missing");
        assertEquals(
                List.of(),
                only(
                        "bond-without-keep-outs",
                        keepOuts,
                        "keepOuts: {}",
                        "kind: cut-to-depth",
                        "kind: heat-and-lift"),
                "nothing is cut");
    }

    @ParameterizedTest
    @CsvSource({"0, 4 mm, ''", "0, 35 mm, WARNING", "0, 80 mm, ERROR"})
    void findsACutThatIsDeeperThanThePart(int edge, String depth, String severity) {
        assertEquals(
                severity.isEmpty()
                        ? List.of()
                        : List.of("cut-deeper-than-part " + severity + " /joints/glass-bond"),
                only(
                        "cut-deeper-than-part",
                        "{edge: 0, depth: 4 mm}",
                        "{edge: " + edge + ", depth: " + depth + "}"));
    }

    @Test
    void findsAStripOutsideThePart() {
        assertEquals(
                List.of("cut-deeper-than-part WARNING /joints/glass-bond"),
                only("cut-deeper-than-part", "[[5, 2], [95, 2]]", "[[5, 2], [195, 2]]"));
    }

    private static List<String> only(String check, String... changes) {
        return Tin.found(changes).stream().filter(line -> line.startsWith(check + " ")).toList();
    }
}
