package reseat.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What surely cannot be taken apart is refused with the facts that block it; what can be is not.
 */
class ReachabilityTest {

    @TempDir Path folder;

    private String read(String supplies, String parts, String joints) {
        StringBuilder text = new StringBuilder("format: reseat-device/1\nid: box\nbase: tray\n");
        text.append("supplies: {").append(supplies).append("}\nparts:\n  tray: {}\n");
        parts.lines().forEach(line -> text.append("  ").append(line).append('\n'));
        text.append("joints:\n");
        joints.lines().forEach(line -> text.append("  ").append(line).append('\n'));
        return Bench.problems(Bench.file(folder, "box.yaml", text.toString()));
    }

    @Test
    void aJointHiddenByThePartItHoldsIsNeverReached() {
        assertEquals(
                """
                box.yaml:7:3: error: part lid can never be moved: lid is held by nail and nail is hidden by lid (lid → nail \
                → lid)
                box.yaml:9:3: error: joint nail can never be released: nail is hidden by lid and lid is held by nail (nail → \
                lid → nail)""",
                read("", "lid: {}", "nail: {kind: clip, holds: [lid, tray], under: lid}"));
    }

    @Test
    void aRingOfCoversThatNothingBreaksIsPrinted() {
        assertEquals(
                """
                box.yaml:7:3: error: part a can never be moved: a lies under b and b lies under a (a → b → a)
                box.yaml:8:3: error: part b can never be moved: b lies under a and a lies under b (b → a → b)""",
                read(
                        "",
                        "a: {under: b}\nb: {under: a}",
                        "x: {kind: clip, holds: [a, tray]}\ny: {kind: clip, holds: [b, tray]}"));
    }

    @Test
    void aRingOfCoversThatLeavesTogetherPassesIfItCanBePartedLater() {
        // a and b hang together by a plug with slack; c keeps them apart from each other's cover
        assertEquals(
                "",
                read(
                        "",
                        "a: {}\nb: {under: a}",
                        "x: {kind: clip, holds: [a, tray]}\ny: {kind: clip, holds: [b,"
                                + " tray]}\nz: {kind: clip, holds: [a, b]}"));
        assertEquals(
                "box.yaml:8:3: error: parts a and b can never be separated: b lies"
                        + " under a and a lies under b (b → a → b)",
                read(
                        "",
                        "a: {under: b}\nb: {under: a}",
                        "x: {kind: clip, holds: [a, tray]}\nz: {kind: clip, holds: [a, b]}"));
    }

    @Test
    void aSocketUnderALidIsReachedByLayingTheLidAside() {
        assertEquals(
                "",
                read(
                        "",
                        "lid: {}",
                        "cable: {kind: clip, holds: [tray, lid], under: tray, slack:"
                                + " true}\nsnap: {kind: clip, holds: [lid, tray]}"));
    }

    @Test
    void aRigidSocketUnderALidIsNeverReached() {
        assertEquals(
                """
                box.yaml:7:3: error: part lid can never be moved: lid is held by cable and cable is hidden by tray
                box.yaml:9:3: error: joint cable can never be released: cable is hidden by tray""",
                read("", "lid: {}", "cable: {kind: clip, holds: [tray, lid], under: tray}"));
    }

    @Test
    void aPartThatOnlyCoversKeepIsLegal() {
        assertEquals(
                "",
                read(
                        "",
                        "lid: {}\nspring: {under: lid}",
                        "snap: {kind: clip, holds: [lid, tray]}"));
    }

    @Test
    void partsThatMustLeaveTogetherAgreeOnToolAndPosture() {
        assertEquals(
                """
                box.yaml:7:3: error: part a can never be moved: a leaves only by hand in face-up and together \
                with b, which leaves by spudger in face-up
                box.yaml:8:3: error: part b can never be moved: b leaves only by spudger in face-up and together \
                with a, which leaves by hand in face-up
                box.yaml:11:3: error: joint glue can never be released: glue is hidden by a and a leaves only by \
                hand in face-up and together with b, which leaves by spudger in face-up""",
                read(
                        "",
                        "a: {}\nb: {move: {tool: spudger}}",
                        "snap: {kind: clip, holds: [a, tray]}\nglue: {kind: clip,"
                                + " holds: [a, b], under: a}"));
    }

    @Test
    void suppliesThatCutEachOtherLateAreARing() {
        assertEquals(
                """
                box.yaml:8:3: error: joint p can never be released: p needs s cut by q and q needs r cut by p (p → q → p)
                box.yaml:9:3: error: joint q can never be released: q needs r cut by p and p needs s cut by q (q → p → q)"""
                        .replace("box.yaml:8", "box.yaml:9")
                        .replace("box.yaml:9:3: error: joint q", "box.yaml:10:3: error: joint q"),
                read(
                                "r: {}, s: {}",
                                "lid: {}",
                                "p: {kind: clip, holds: [lid, tray], needs: s, cuts:"
                                        + " r}\nq: {kind: clip, holds: [lid, tray], needs: r, cuts: s}")
                        .lines()
                        .filter(line -> line.contains("joint"))
                        .collect(java.util.stream.Collectors.joining("\n")));
    }

    @Test
    void aScrewUnderThePartThatItHoldsStrainsItsClipForGood() {
        String text =
                """
                format: reseat-device/1
                id: box
                base: tray
                screwTypes: {m: {thread: M2x0.4, length: 4 mm, head: pan, drive: PH0}}
                parts:
                  tray: {}
                  lid: {}
                  inner: {under: lid}
                joints:
                  hidden: {kind: screw, screw: m, holds: [lid, tray], under: inner}
                  clip: {kind: clip, holds: [lid, tray]%s}
                  pad: {kind: clip, holds: [inner, tray]}
                """;
        assertEquals(
                "box.yaml:11:3: error: joint clip can never be released: clip is strained by hidden,"
                        + " hidden is hidden by inner, inner lies under lid and lid is held by hidden"
                        + " (hidden → inner → lid → hidden)",
                Bench.problems(Bench.file(folder, "box.yaml", String.format(text, "")))
                        .lines()
                        .filter(line -> line.contains("joint clip"))
                        .reduce("", String::concat));
        assertEquals(
                "",
                Bench.problems(
                                Bench.file(
                                        folder,
                                        "box.yaml",
                                        String.format(text, ", ways: {usual: {strainedBy: []}}")))
                        .lines()
                        .filter(line -> line.contains("joint clip"))
                        .reduce("", String::concat),
                "stating that nothing strains it waives the rule");
    }

    @Test
    void aJointThatGivesNeedNotBeReached() {
        String hidden = "nail: {kind: clip, holds: [lid, tray], under: lid, gives: true%s}";
        assertEquals("", read("", "lid: {}", String.format(hidden, "")));
    }

    @Test
    void aJointThatGivesHoldsUntilWhatItNeedsIsCut() {
        assertEquals(
                """
                box.yaml:9:3: error: part lid can never be moved: lid is held by nail, nail needs s cut by plug and \
                plug is hidden by lid (lid → nail → plug → lid)""",
                read(
                                "s: {}",
                                "lid: {}",
                                "nail: {kind: clip, holds: [lid, tray], gives: true, needs:"
                                        + " s}\nplug: {kind: clip, holds: [lid, tray], slack: true,"
                                        + " under: lid, cuts: s}")
                        .lines()
                        .filter(line -> line.contains("part lid"))
                        .reduce("", String::concat)
                        .replaceAll("box.yaml:[0-9]+", "box.yaml:9"));
    }

    @Test
    void aPartThatNeedsASupplyCutWaitsForItsIsolator() {
        String plug = "snap: {kind: clip, holds: [lid, tray]}\nplug: {kind: clip, holds: [lid, tray]";
        assertEquals(
                "",
                read("s: {}", "lid: {needs: s}", plug + ", cuts: s}"),
                "the isolator can be released first");
        assertEquals(
                "part lid can never be moved: lid needs s cut by plug and plug is hidden by lid (lid →"
                        + " plug → lid)",
                read("s: {}", "lid: {needs: s}", plug + ", slack: true, under: lid, cuts: s}")
                        .lines()
                        .filter(line -> line.contains("part lid"))
                        .reduce("", String::concat)
                        .replaceAll("^.*error: ", ""));
    }
}
