package reseat.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import reseat.model.Power.Need;
import reseat.model.Power.Rule;

/** What needs power cut, and why: each rule on a device of a few lines. */
class PowerTest {

    /** A lid over the plug of a cell, and a fan beneath it. */
    private static final String[] LAPTOP = {
        "cover lid",
        "screw lid-screw: lid frame",
        "cell pack under=lid",
        "connector pack-plug: pack frame slack under=lid cuts=cell",
        "part fan under=lid",
        "screw fan-screw: fan frame under=lid",
        "supply cell of=pack"
    };

    private static Device laptop(String... more) {
        List<String> lines = new ArrayList<>(List.of(LAPTOP));
        lines.addAll(List.of(more));
        return FewWords.device(lines.toArray(new String[0]));
    }

    private static List<Need> why(Device device, String... parts) {
        return device.power().why(Arrays.asList(parts));
    }

    private static List<Need> why(Device device, Joint joint) {
        return device.power().why(joint);
    }

    @Nested
    class Outside {

        @Test
        void whatNothingInsideLiesUnderIsOutside() {
            Power power = laptop("cover foot", "screw foot-screw: foot frame").power();
            assertEquals(Set.of("foot"), power.outsideParts());
            assertEquals(Set.of("lid-screw", "foot-screw"), power.outsideJoints());
        }

        @Test
        void aCoverOfPartsWithoutARoleDoesNotOpenTheDevice() {
            Power power =
                    FewWords.device(
                                    "cover cap",
                                    "part brush under=cap",
                                    "screw brush-screw: brush frame under=cap")
                            .power();
            assertEquals(Set.of("cap", "brush"), power.outsideParts());
            assertEquals(Set.of("brush-screw"), power.outsideJoints());
        }

        @Test
        void aCoverOfABoardACellADisplayOrACableOpensIt() {
            for (String kind : List.of("board", "cell", "display", "cable")) {
                Power power = FewWords.device("cover cap", kind + " inner under=cap").power();
                assertEquals(Set.of(), power.outsideParts(), kind);
            }
        }

        @Test
        void aCoverOfAConnectorOpensItWhateverThePart() {
            Power power =
                    FewWords.device(
                                    "cover cap",
                                    "part lamp",
                                    "connector plug: lamp frame slack under=cap")
                            .power();
            assertEquals(Set.of("lamp"), power.outsideParts());
            assertEquals(Set.of(), power.outsideJoints());
        }

        @Test
        void aJointThatHoldsItFromInsideKeepsAPartIn() {
            String[] lines = {"board main", "cover cap", "board inner under=cap", "part trim"};
            List<String> with = new ArrayList<>(List.of(lines));
            with.add("screw trim-screw: trim frame under=cap");
            assertFalse(device(with).power().outsideParts().contains("trim"));
            with.set(4, "screw trim-screw: trim frame under=cap slack");
            assertTrue(device(with).power().outsideParts().contains("trim"));
            with.set(4, "screw trim-screw: trim frame under=cap gives");
            assertTrue(device(with).power().outsideParts().contains("trim"));
        }

        @Test
        void theBaseIsNeverOutsideNorIsWhatItHides() {
            Power power = FewWords.device("cover lid", "clip catch: lid frame under=frame").power();
            assertEquals(Set.of(), power.outsideJoints());
            assertEquals(Set.of(), power.outsideParts());
        }

        @Test
        void anActIsOutsideIfAllItsPartsAre() {
            Power power = laptop("cover foot").power();
            assertTrue(power.isOutside(Act.parse("move:foot")));
            assertFalse(power.isOutside(Act.parse("move:foot+fan")));
            assertTrue(power.isOutside(Act.parse("release:lid-screw/w")));
            assertFalse(power.isOutside(Act.parse("release:fan-screw/w")));
            assertTrue(power.isOutside(Act.parse("prepare:anything")));
        }
    }

    @Nested
    class OnTheWay {

        @Test
        void coversTheirJointsAndTheirCoversAreOnTheWay() {
            Power power =
                    FewWords.device(
                                    "cover skin",
                                    "clip skin-clip: skin lid",
                                    "cover lid under=skin",
                                    "screw lid-screw: lid frame under=skin",
                                    "part other",
                                    "connector plug: pack frame slack under=lid cuts=cell",
                                    "cell pack",
                                    "supply cell of=pack")
                            .power();
            assertEquals(Set.of("skin", "lid"), power.partsOnTheWay("cell"));
            assertEquals(Set.of("skin-clip", "lid-screw", "plug"), power.jointsOnTheWay("cell"));
        }

        @Test
        void jointsWithSlackAndJointsThatGiveAreNot() {
            Power power =
                    FewWords.device(
                                    "cover lid",
                                    "connector ribbon: lid frame slack",
                                    "joint contact: lid frame gives",
                                    "cell pack",
                                    "connector plug: pack frame under=lid cuts=cell",
                                    "supply cell")
                            .power();
            assertEquals(Set.of("plug"), power.jointsOnTheWay("cell"));
        }

        @Test
        void theCellOnSpringContactsIsWithAllThatHoldsIt() {
            Device device =
                    FewWords.device(
                            "cover lid",
                            "screw lid-screw: lid frame",
                            "cell pack under=lid",
                            "clip strap: pack frame under=lid",
                            "connector contacts: pack frame gives under=lid cuts=cell",
                            "part fan under=lid",
                            "supply cell of=pack");
            assertEquals(Set.of("lid", "pack"), device.power().partsOnTheWay("cell"));
            assertEquals(
                    Set.of("lid-screw", "strap", "contacts"),
                    device.power().jointsOnTheWay("cell"));
            assertEquals(Map.of(), device.power().dropped());
            assertEquals(List.of(), why(device, "pack"));
            assertEquals(List.of(), why(device, device.joint("strap")));
            assertEquals(List.of(new Need("cell", Rule.POWER_FIRST)), why(device, "fan"));
        }

        @Test
        void theSiteOfSpringContactsIsWhereTheirOtherPartIsTheBase() {
            Power power =
                    FewWords.device(
                                    "board main",
                                    "connector contacts: frame main gives cuts=cell",
                                    "supply cell")
                            .power();
            assertEquals(Set.of("main"), power.partsOnTheWay("cell"));
            assertEquals(Map.of(), power.dropped());
        }

        @Test
        void aRuleIsDroppedWhereTheCellOnSpringContactsCannotBeMoved() {
            Power power =
                    FewWords.device(
                                    "cell pack under=frame",
                                    "connector contacts: pack frame gives cuts=cell",
                                    "supply cell of=pack")
                            .power();
            assertEquals(Set.of("cell"), power.dropped().keySet());
        }

        @Test
        void whatStrainsAJointOnTheWayIsToo() {
            Power power =
                    FewWords.device(
                                    "cover lid",
                                    "screw lid-screw: lid frame",
                                    "cell pack",
                                    "clip strap: lid frame pry cuts=cell",
                                    "supply cell")
                            .power();
            assertEquals(Set.of("lid-screw", "strap"), power.jointsOnTheWay("cell"));
        }

        @Test
        void whereTheBaseHidesAJointItsSiteIsInsteadOfItsCovers() {
            Power power =
                    FewWords.device(
                                    "cover lid",
                                    "cover flap",
                                    "screw lid-screw: lid frame",
                                    "cell pack",
                                    "connector plug: pack lid under=frame,flap cuts=cell",
                                    "supply cell")
                            .power();
            assertEquals(Set.of("lid"), power.partsOnTheWay("cell"));
            // what holds the site is on the way, the plug itself among it
            assertEquals(Set.of("lid-screw", "plug"), power.jointsOnTheWay("cell"));
        }

        @Test
        void everyIsolatorHasItsWay() {
            Power power =
                    FewWords.device(
                                    "cover one",
                                    "cover two",
                                    "joint fuse: one frame under=one cuts=cell",
                                    "joint plug: two frame under=two cuts=cell",
                                    "supply cell")
                            .power();
            assertEquals(Set.of("one", "two"), power.partsOnTheWay("cell"));
        }
    }

    @Nested
    class PowerFirst {

        @Test
        void whatIsInsideAndNotOnTheWayNeedsTheSupplyCut() {
            Device device = laptop();
            List<Need> needs = List.of(new Need("cell", Rule.POWER_FIRST));
            assertEquals(needs, why(device, device.joint("fan-screw")));
            assertEquals(needs, why(device, "fan"));
            assertEquals(List.of("cell"), device.power().needs(List.of("fan")));
        }

        @Test
        void whatIsOnTheWayOrOutsideNeedsNothing() {
            Device device = laptop("cover foot");
            assertEquals(List.of(), why(device, "lid"));
            assertEquals(List.of(), why(device, device.joint("lid-screw")));
            assertEquals(List.of(), why(device, device.joint("pack-plug")));
            assertEquals(List.of(), why(device, "foot"));
        }

        @Test
        void partsMovedTogetherAreExemptIfOneIsOnTheWayAndNeedItIfOneIsInside() {
            Device device = laptop("cover foot");
            assertEquals(List.of(), why(device, "lid", "fan"));
            assertEquals(List.of(new Need("cell", Rule.POWER_FIRST)), why(device, "foot", "fan"));
        }

        @Test
        void aMarkedSupplyComesFirst() {
            String[] dock = {"joint dock-plug: dock frame cuts=mains", "part dock", "supply mains"};
            assertEquals(List.of("mains"), laptop(dock).power().first());
            dock[2] = "supply mains first";
            assertEquals(List.of("mains"), laptop(dock).power().first());
        }

        @Test
        void allThatAreMarkedComeFirst() {
            Power power =
                    FewWords.device(
                                    "part a",
                                    "part b",
                                    "joint x: a frame cuts=north",
                                    "joint y: b frame cuts=south",
                                    "supply north first",
                                    "supply south first",
                                    "supply east first")
                            .power();
            assertEquals(List.of("north", "south"), power.first());
        }

        @Test
        void unmarkedTheOneWithTheFewestOnItsWayThenById() {
            String[] lines = {
                "cover lid",
                "part a",
                "joint x: a frame under=lid cuts=north",
                "joint y: a frame cuts=south",
                "supply north",
                "supply south"
            };
            assertEquals(List.of("south"), FewWords.device(lines).power().first());
            lines[2] = "joint x: a frame cuts=north";
            assertEquals(List.of("north"), FewWords.device(lines).power().first());
        }

        @Test
        void aMarkOnASupplyThatNothingCutsCountsForNothing() {
            assertEquals(List.of("cell"), laptop("supply sun first").power().first());
        }
    }

    @Nested
    class WorkOnACell {

        @Test
        void theCellAndWhatHoldsItNeedItCut() {
            Device device = laptop("clip strap: pack frame");
            assertEquals(List.of(new Need("cell", Rule.WORK_ON_CELL)), why(device, "pack"));
            assertEquals(
                    List.of(new Need("cell", Rule.WORK_ON_CELL)),
                    why(device, device.joint("strap")));
        }

        @Test
        void alsoWhenItIsOutsideAndAnotherSupplyComesFirst() {
            Device device =
                    FewWords.device(
                            "cell pack",
                            "joint strap: pack frame",
                            "cover lid",
                            "connector plug: pack frame slack under=lid cuts=cell",
                            "joint jack: lid frame cuts=mains",
                            "supply cell of=pack",
                            "supply mains first");
            assertTrue(device.power().outsideJoints().contains("strap"));
            assertEquals(List.of("cell"), device.power().needs(device.joint("strap")));
        }

        @Test
        void notWhatIsOnTheWayToItsIsolator() {
            Device device =
                    FewWords.device(
                            "cell pack",
                            "joint strap: pack frame",
                            "connector plug: pack frame under=pack slack cuts=cell",
                            "supply cell of=pack");
            assertEquals(List.of(), why(device, device.joint("strap")));
            assertEquals(List.of(), why(device, "pack"));
        }
    }

    @Nested
    class Dropped {

        @Test
        void aSupplyThatNothingCutsHasNoRules() {
            Device device = laptop("part sail", "supply sun of=sail", "joint tie: sail frame");
            assertEquals(Map.of("sun", "no joint cuts it"), device.power().dropped());
            assertEquals(List.of(), why(device, device.joint("tie")));
        }

        @Test
        void soHasOneWhoseIsolatorNobodyReaches() {
            Device device =
                    FewWords.device(
                            "cover one under=two",
                            "cover two under=one",
                            "cell pack",
                            "part fan under=pack",
                            "connector plug: pack frame slack under=one cuts=cell",
                            "supply cell of=pack");
            assertEquals(
                    Map.of(
                            "cell",
                            "no way leads to plug, which cuts it, unless parts that only lie"
                                    + " together move as one"),
                    device.power().dropped());
            assertEquals(List.of(), why(device, "pack"));
            assertEquals(List.of(), why(device, "fan"));
        }

        @Test
        void ofTwoThatWaitForEachOtherTheLastInTheFile() {
            String[] lines = {
                "cover lid",
                "cell a under=lid",
                "cell b under=lid",
                "connector plug-a: a frame slack under=b cuts=one",
                "connector plug-b: b frame slack under=a cuts=two",
                "supply one of=a",
                "supply two of=b"
            };
            // to reach the plug of one, the cell of two is moved, and the other way round
            Power power = FewWords.device(lines).power();
            assertEquals(Set.of("two"), power.dropped().keySet());
            lines[5] = "supply two of=b";
            lines[6] = "supply one of=a";
            assertEquals(Set.of("one"), FewWords.device(lines).power().dropped().keySet());
        }

        @Test
        void aContactThatGivesAndHasSlackIsNotPartedUnderAPowerThatItNeedsCut() {
            Device device =
                    FewWords.device(
                            "cover lid",
                            "joint contact: lid frame slack gives needs=sun",
                            "cell pack",
                            "connector plug: pack frame slack under=lid cuts=cell",
                            "supply cell",
                            "supply sun");
            assertEquals(Set.of("cell", "sun"), device.power().dropped().keySet());
        }
    }

    @Nested
    class Stated {

        @Test
        void whatAJointOrPartStatesReplacesTheRules() {
            Device device =
                    laptop(
                            "part mat under=lid needs=none",
                            "part lamp under=lid needs=mains",
                            "supply mains");
            assertEquals(List.of(), why(device, "mat"));
            assertEquals(List.of(new Need("mains", Rule.STATED)), why(device, "lamp"));
        }

        @Test
        void ofPartsMovedTogetherItCountsTogether() {
            Device device =
                    laptop(
                            "part mat under=lid needs=none",
                            "part lamp under=lid needs=mains",
                            "supply mains");
            assertEquals(List.of("mains"), device.power().needs(List.of("mat", "lamp")));
        }

        @Test
        void theRulesApplyUnlessAllStateSomething() {
            Device device = laptop("part lamp under=lid needs=mains", "supply mains");
            assertEquals(
                    List.of(new Need("mains", Rule.STATED), new Need("cell", Rule.POWER_FIRST)),
                    why(device, "lamp", "fan"));
        }

        @Test
        void aDoorIsOpenedByAnyone() {
            // the reader takes what the kind states; nothing is waived by it
            Device device =
                    laptop("door hatch under=lid needs=none", "part mat under=lid needs=none");
            assertEquals(List.of(), why(device, "hatch"));
            assertEquals(List.of(), device.power().waived(device.part("hatch")));
            assertEquals(List.of("cell"), device.power().waived(device.part("mat")));
        }

        @Test
        void aJointIsWaivedByWhatTheFileLeavesOut() {
            Device device = laptop("screw mat-screw: fan frame under=lid needs=none");
            assertEquals(List.of("cell"), device.power().waived(device.joint("mat-screw")));
            assertEquals(List.of(), device.power().waived(device.joint("fan-screw")));
        }
    }

    @Nested
    class Strain {

        private final Device device =
                FewWords.device(
                        "cover lid",
                        "part trim",
                        "screw long: lid trim frame",
                        "screw short: lid frame",
                        "screw alone: trim frame",
                        "clip catch: lid frame pry",
                        "clip slide: lid frame",
                        "clip told: lid frame pry strained=slide",
                        "clip eased: lid frame pry strained=none",
                        "screw drilled: lid frame pry");

        private List<String> strainedBy(String joint) {
            return device.strainedBy(device.joint(joint), device.joint(joint).firstWay());
        }

        @Test
        void everyScrewThatHoldsTwoOfItsPartsStrainsAForcefulWay() {
            assertEquals(List.of("long", "short", "drilled"), strainedBy("catch"));
        }

        @Test
        void noneStrainsAGentleWayAndNoScrewStrainsItself() {
            assertEquals(List.of(), strainedBy("slide"));
            assertEquals(List.of("long", "short"), strainedBy("drilled"));
        }

        @Test
        void whatTheWayStatesReplacesThem() {
            assertEquals(List.of("slide"), strainedBy("told"));
            assertEquals(List.of(), strainedBy("eased"));
        }
    }

    private static Device device(List<String> lines) {
        return FewWords.device(lines.toArray(new String[0]));
    }
}
