package reseat.console.command;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import reseat.model.Goal;

/** The goal of a plan; exactly one of the options. */
final class GoalArgs {

    @Option(
            names = "--free",
            paramLabel = "PART",
            split = ",",
            description = "Take these parts off, and nothing that can stay.")
    private List<String> free = new ArrayList<>();

    @Option(
            names = "--reach",
            paramLabel = "JOINT",
            description = "Get access to this joint, ready to be released.")
    private @Nullable String reach;

    @Option(names = "--all", description = "Take everything apart.")
    private boolean all;

    Goal goal() {
        int given = (free.isEmpty() ? 0 : 1) + (reach == null ? 0 : 1) + (all ? 1 : 0);
        if (given != 1) {
            throw new BadInput(
                    "reseat: "
                            + (given == 0 ? "say what to achieve" : "give one goal only")
                            + ": --free PART[,PART], --reach JOINT or --all.");
        }
        if (all) {
            return new Goal.Teardown();
        }
        return reach != null
                ? new Goal.Reach(reach)
                : new Goal.Free(free.stream().distinct().toList());
    }

    boolean given() {
        return !free.isEmpty() || reach != null || all;
    }
}
