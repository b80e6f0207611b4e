package reseat.console.command;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;
import reseat.model.Rules;

/** What the user forbids, requires and permits. */
final class RuleArgs {

    @Option(
            names = "--forbid-part",
            paramLabel = "PART",
            split = ",",
            description = "Parts that must not be moved.")
    private List<String> forbidParts = new ArrayList<>();

    @Option(
            names = "--forbid-joint",
            paramLabel = "JOINT",
            split = ",",
            description = "Joints that must not be released.")
    private List<String> forbidJoints = new ArrayList<>();

    @Option(
            names = "--forbid-tool",
            paramLabel = "TOOL",
            split = ",",
            description = "Tools that are not available.")
    private List<String> forbidTools = new ArrayList<>();

    @Option(
            names = "--forbid-act",
            paramLabel = "ACT",
            split = ",",
            description = "Acts that must not occur, by id (release:JOINT/WAY, move:PART+PART).")
    private List<String> forbidActs = new ArrayList<>();

    @Option(
            names = "--require-part",
            paramLabel = "PART",
            split = ",",
            description = "Parts that must be moved as well.")
    private List<String> requireParts = new ArrayList<>();

    @Option(
            names = "--require-joint",
            paramLabel = "JOINT",
            split = ",",
            description = "Joints that must be released as well.")
    private List<String> requireJoints = new ArrayList<>();

    @Option(
            names = "--require-tool",
            paramLabel = "TOOL",
            split = ",",
            description = "Tools that must be used.")
    private List<String> requireTools = new ArrayList<>();

    @Option(
            names = "--require-act",
            paramLabel = "ACT",
            split = ",",
            description = "Acts that must occur, by id.")
    private List<String> requireActs = new ArrayList<>();

    @Option(
            names = "--permit-ruin",
            paramLabel = "PART",
            split = ",",
            description = "Parts that the work may destroy.")
    private List<String> permitRuin = new ArrayList<>();

    Rules rules() {
        return Rules.none()
                .forbidParts(forbidParts)
                .forbidJoints(forbidJoints)
                .forbidTools(forbidTools)
                .forbidActs(forbidActs)
                .requireParts(requireParts)
                .requireJoints(requireJoints)
                .requireTools(requireTools)
                .requireActs(requireActs)
                .permitRuin(permitRuin);
    }
}
