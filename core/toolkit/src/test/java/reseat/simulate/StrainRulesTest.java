package reseat.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static reseat.simulate.ReleaseRulesTest.assertAllowed;
import static reseat.simulate.ReleaseRulesTest.assertRefused;
import static reseat.simulate.ReleaseRulesTest.run;
import static reseat.simulate.Sketch.pry;
import static reseat.simulate.Sketch.release;
import static reseat.simulate.Sketch.way;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;

/** Nothing is forced while a screw still pulls on it. */
class StrainRulesTest {

    private final Sketch clip =
            new Sketch()
                    .part("lid")
                    .joint("cover-screw", "lid", "frame")
                    .joint("side-screw", "lid", "frame")
                    .joint("clip", "lid", "frame")
                    .ways("clip", pry("usual"));

    @Test
    void aTightScrewIsNamedWithWhatItWouldStrain() {
        assertRefused(
                1,
                "The cover screw is still tight and would strain the clip: release it first.",
                run(clip, release("side-screw"), release("clip")));
    }

    @Test
    void severalAreNamedTogether() {
        assertRefused(
                0,
                "The cover screw and the side screw are still tight and would strain the clip:"
                        + " release them first.",
                run(clip, release("clip")));
    }

    @Test
    void onceTheyAreOutItIsAllowed() {
        assertAllowed(run(clip, release("cover-screw"), release("side-screw"), release("clip")));
    }

    @Test
    void aGentleWayOfTheSameJointIsNotStrained() {
        clip.ways("clip", pry("pry"), way("slide", "hand", "face-up", 1, 1));
        assertRefused(
                0,
                "The cover screw and the side screw are still tight and would strain the clip"
                        + " by the way \"pry\": release them first.",
                run(clip, release("clip", "pry")));
        assertAllowed(run(clip, release("clip", "slide")));
    }

    @Test
    void whatTheWayStatesReplacesTheRule() {
        clip.ways("clip", pry("usual", "side-screw"));
        assertAllowed(run(clip, release("side-screw"), release("clip")));
        assertRefused(
                1,
                "The side screw is still tight and would strain the clip: release it first.",
                run(clip, release("cover-screw"), release("clip")));
    }

    @Test
    void aJointThatOnlyStrainedWaysReleaseIsNotReached() {
        assertEquals(
                Optional.of(
                        "The cover screw and the side screw are still tight and would strain the"
                                + " clip: release them first."),
                reach(Rules.none()));
        clip.ways("clip", pry("pry"), way("slide", "hand", "face-up", 1, 1));
        assertEquals(Optional.empty(), reach(Rules.none()));
        assertEquals(
                Optional.of(
                        "The cover screw and the side screw are still tight and would strain the"
                                + " clip by the way \"pry\": release them first."),
                reach(Rules.none().forbidActs(List.of("release:clip/slide"))));
    }

    private Optional<String> reach(Rules rules) {
        return Simulator.judge(
                        clip.device(), State.closed(), new Goal.Reach("clip"), rules, List.of())
                .goalMissing();
    }
}
