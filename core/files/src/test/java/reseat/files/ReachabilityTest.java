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
        return TinDevice.problems(TinDevice.file(folder, "box.yaml", text.toString()));
    }

    @Test
    void aJointHiddenByThePartItHoldsIsNeverReached() {
        assertEquals(
                """
                box.yaml:9:42: error: joint nail can never be released: nail is hidden by lid and lid is held by nail (nail → \
                lid → nail). And 1 that follows: lid. Without "nail is hidden by lid" everything would come apart""",
                read("", "lid: {}", "nail: {kind: clip, holds: [lid, tray], under: lid}"));
    }

    @Test
    void aRingOfCoversThatNothingBreaksIsPrinted() {
        assertEquals(
                """
                box.yaml:8:7: error: part b can never be moved: b lies under a and a lies under b (b → a → b). And 1 that \
                follows: a. Without "b lies under a" everything would come apart""",
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
                "box.yaml:8:7: error: parts a and b can never be separated: b lies"
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
                box.yaml:9:43: error: joint cable can never be released: cable is hidden by tray and lid is held by cable \
                (cable → lid → cable). And 1 that follows: lid. Without "cable is hidden by tray" everything would come apart""",
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
                box.yaml:11:37: error: joint glue can never be released: glue is hidden by a and a is held by glue (glue → a → \
                glue). And 2 that follow: a and b. Without "glue is hidden by a" everything would come apart""",
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
                box.yaml:4:12: warning: supply r: nothing waits until it is cut, unless a part or joint states that it needs it: \
                no way leads to p, which cuts it, unless parts that only lie together move as one
                box.yaml:4:19: warning: supply s: nothing waits until it is cut, unless a part or joint states that it needs it: \
                no way leads to q, which cuts it, unless parts that only lie together move as one
                box.yaml:9:39: error: joint p can never be released: p needs s cut by q and q needs r cut by p (p → q → p). \
                And 2 that follow: q and lid. Without "p needs s cut by q" everything would come apart""",
                read(
                        "r: {}, s: {}",
                        "lid: {}",
                        "p: {kind: clip, holds: [lid, tray], needs: s, cuts:"
                                + " r}\nq: {kind: clip, holds: [lid, tray], needs: r, cuts: s}"));
    }

    @Test
    void aPartThatLeavesInAnotherMannerThanItsFellowsIsTheCause() {
        assertEquals(
                """
                box.yaml:8:7: error: part b can never be moved: b leaves only by spudger in face-up and together with a, which \
                leaves by hand in face-up. And 2 that follow: plug and a. Without this everything would come apart""",
                read(
                        "",
                        "a: {}\nb: {move: {tool: spudger}}",
                        "snap: {kind: clip, holds: [b, tray]}\nplug: {kind: clip, holds: [a, b],"
                                + " under: tray}"));
    }

    @Test
    void eachCauseIsReportedOnce() {
        assertEquals(
                """
                box.yaml:12:42: error: joint nail can never be released: nail is hidden by fan, fan is held by snap, snap is hidden \
                by lid and lid is held by nail (nail → fan → snap → lid → nail). And 3 that follow: snap, lid and fan. Without \
                "nail is hidden by fan" these would come apart
                box.yaml:14:41: error: joint pin can never be released: pin is hidden by knob, knob lies under box and box is held \
                by pin (pin → knob → box → pin). And 2 that follow: box and knob. Without "pin is hidden by knob" these would \
                come apart""",
                read(
                        "",
                        "lid: {}\nfan: {under: lid}\nbox: {}\nknob: {under: box}",
                        """
                        nail: {kind: clip, holds: [lid, tray], under: fan}
                        snap: {kind: clip, holds: [fan, tray], under: lid}
                        pin: {kind: clip, holds: [box, tray], under: knob}
                        ring: {kind: clip, holds: [knob, tray]}"""));
    }

    @Test
    void whatFollowsFromOneWrongFactIsFolded() {
        StringBuilder parts = new StringBuilder("lid: {}\n");
        StringBuilder joints =
                new StringBuilder("nail: {kind: clip, holds: [lid, tray], under: [p7]}\n");
        for (int i = 0; i < 30; i++) {
            parts.append("p").append(i).append(": {under: lid}\n");
            joints.append("j" + i + ": {kind: clip, holds: [p" + i + ", tray], under: lid}\n");
        }
        assertEquals(
                """
                box.yaml:39:50: error: joint nail can never be released: nail is hidden by p7, p7 is held by j7, j7 is hidden by \
                lid and lid is held by nail (nail → p7 → j7 → lid → nail). And 61 that follow: j0, j1, j2, j3, j4, j5 and 55 \
                more. Without "nail is hidden by p7" everything would come apart""",
                read("", parts.toString(), joints.toString()));
    }

    @Test
    void anUnknownNameIsReportedOnceWithTheOtherPlaces() {
        assertEquals(
                """
                box.yaml:8:16: error: under: there is no part "lit". Did you mean "lid"? The same at 2 other places: lines 9, 11""",
                read(
                        "",
                        "lid: {}\nfan: {under: lit}\nbox: {under: lit}",
                        "snap: {kind: clip, holds: [lit, tray]}\npin: {kind: clip, holds: [lid, tray]}"));
    }

    @Test
    void aSupplyThatNothingCutsIsReportedOnce() {
        assertEquals(
                """
                box.yaml:9:42: error: joint snap needs cell cut, but no joint cuts it. The same at 1 other place: line 10""",
                read(
                        "cell: {}",
                        "lid: {}",
                        "snap: {kind: clip, holds: [lid, tray], needs: cell}\n"
                                + "pin: {kind: clip, holds: [lid, tray], needs: cell}"));
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
                "box.yaml:10:55: error: joint hidden can never be released: hidden is hidden by inner,"
                        + " inner lies under lid and lid is held by hidden (hidden → inner → lid →"
                        + " hidden). And 3 that follow: clip, lid and inner. Without \"hidden is hidden"
                        + " by inner\" everything would come apart",
                TinDevice.problems(TinDevice.file(folder, "box.yaml", String.format(text, "")))
                        .lines()
                        .filter(line -> line.contains("clip"))
                        .reduce("", String::concat));
        assertEquals(
                "",
                TinDevice.problems(
                                TinDevice.file(
                                        folder,
                                        "box.yaml",
                                        String.format(text, ", ways: {usual: {strainedBy: []}}")))
                        .lines()
                        .filter(line -> line.contains("clip"))
                        .reduce("", String::concat),
                "stating that nothing strains it waives the rule");
    }

    @Test
    void aJointThatGivesNeedNotBeReached() {
        String hidden = "nail: {kind: clip, holds: [lid, tray], under: lid, gives: true%s}";
        assertEquals("", read("", "lid: {}", String.format(hidden, "")));
    }

    @Test
    void springContactsAreReleasedOnlyByAMoveThatMustNotWaitForThem() {
        String joints =
                "nail: {kind: clip, holds: [lid, tray], needs: s}\n"
                        + "springs: {kind: contact-block, holds: [lid, tray], cuts: s%s}";
        assertEquals(
                "joint nail can never be released: nail needs s cut by springs, springs lets go only"
                        + " with lid and lid is held by nail (nail → springs → lid → nail)",
                read("s: {}", "lid: {}", String.format(joints, ""))
                        .lines()
                        .filter(line -> line.contains("joint nail"))
                        .reduce("", String::concat)
                        .replaceAll("^.*?error: |\\. And .*$", ""));
        assertEquals("", read("s: {}", "lid: {}", String.format(joints, ", gives: false")));
    }

    @Test
    void aJointThatGivesHoldsUntilWhatItNeedsIsCut() {
        assertEquals(
                """
                box.yaml:9:55: error: joint plug can never be released: plug is hidden by lid, lid is held by nail and \
                nail needs s cut by plug (plug → lid → nail → plug). And 2 that follow: nail and lid. Without "plug is \
                hidden by lid" everything would come apart""",
                read(
                                "s: {}",
                                "lid: {}",
                                "nail: {kind: clip, holds: [lid, tray], gives: true, needs:"
                                        + " s}\nplug: {kind: clip, holds: [lid, tray], slack: true,"
                                        + " under: lid, cuts: s}")
                        .lines()
                        .filter(line -> line.contains("joint plug"))
                        .reduce("", String::concat)
                        .replaceAll("box.yaml:[0-9]+:[0-9]+", "box.yaml:9:55"));
    }

    @Test
    void aPartThatNeedsASupplyCutWaitsForItsIsolator() {
        String plug =
                "snap: {kind: clip, holds: [lid, tray]}\nplug: {kind: clip, holds: [lid, tray]";
        assertEquals(
                "",
                read("s: {}", "lid: {needs: s}", plug + ", cuts: s}"),
                "the isolator can be released first");
        assertEquals(
                "joint plug can never be released: plug is hidden by lid and lid needs s cut by plug"
                        + " (plug → lid → plug). And 1 that follows: lid. Without \"plug is hidden by"
                        + " lid\" everything would come apart",
                read("s: {}", "lid: {needs: s}", plug + ", slack: true, under: lid, cuts: s}")
                        .lines()
                        .filter(line -> line.contains("joint plug"))
                        .reduce("", String::concat)
                        .replaceAll("^.*error: ", ""));
    }
}
