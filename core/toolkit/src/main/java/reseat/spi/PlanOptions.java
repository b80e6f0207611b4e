package reseat.spi;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.plan.Effort;
import reseat.spi.CommandOption.Kind;

/**
 * The options of {@code reseat plan} and similar commands, for other commands that plan: the goal,
 * what is forbidden or required, the effort limit.
 */
public final class PlanOptions {

    private static final Pattern TIME =
            Pattern.compile("\\s*([0-9]{1,7}(?:\\.[0-9]{1,3})?)\\s*(ms|s|min|h)\\s*");

    private static final List<Wish> WISHES =
            List.of(
                    new Wish(
                            "--forbid-part",
                            Kind.PART,
                            "PART",
                            "Parts that must not be moved.",
                            Rules::forbidParts),
                    new Wish(
                            "--forbid-joint",
                            Kind.JOINT,
                            "JOINT",
                            "Joints that must not be released.",
                            Rules::forbidJoints),
                    new Wish(
                            "--forbid-tool",
                            Kind.ID,
                            "TOOL",
                            "Tools that are not available.",
                            Rules::forbidTools),
                    new Wish(
                            "--forbid-act",
                            Kind.ID,
                            "ACT",
                            "Acts that must not occur, by id (release:JOINT/WAY, move:PART+PART).",
                            Rules::forbidActs),
                    new Wish(
                            "--require-part",
                            Kind.PART,
                            "PART",
                            "Parts that must be moved as well.",
                            Rules::requireParts),
                    new Wish(
                            "--require-joint",
                            Kind.JOINT,
                            "JOINT",
                            "Joints that must be released as well.",
                            Rules::requireJoints),
                    new Wish(
                            "--require-tool",
                            Kind.ID,
                            "TOOL",
                            "Tools that must be used.",
                            Rules::requireTools),
                    new Wish(
                            "--require-act",
                            Kind.ID,
                            "ACT",
                            "Acts that must occur, by id.",
                            Rules::requireActs),
                    new Wish(
                            "--permit-ruin",
                            Kind.PART,
                            "PART",
                            "Parts that the work may destroy.",
                            Rules::permitRuin));

    private record Wish(
            String name,
            Kind kind,
            String label,
            String meaning,
            BiFunction<Rules, List<String>, Rules> rule) {}

    private PlanOptions() {}

    /** Returns the options for the goal. */
    public static List<CommandOption> forGoal() {
        return List.of(
                CommandOption.option(
                                "--free",
                                Kind.PART,
                                "PART",
                                "Take these parts off, and nothing that can stay.")
                        .asRepeatable(),
                CommandOption.option(
                        "--reach",
                        Kind.JOINT,
                        "JOINT",
                        "Get access to this joint, ready to be released."),
                CommandOption.flag("--all", "Take everything apart."));
    }

    /** Returns the options for what is forbidden, required and permitted. */
    public static List<CommandOption> forRules() {
        return WISHES.stream()
                .map(
                        wish ->
                                CommandOption.option(wish.name, wish.kind, wish.label, wish.meaning)
                                        .asRepeatable())
                .toList();
    }

    /** Returns the options for the effort limit. */
    public static List<CommandOption> forEffort() {
        return List.of(
                CommandOption.option(
                        "--time",
                        Kind.TEXT,
                        "TIME",
                        "Time limit, such as 500 ms, 20 s, 2 min (default: 5 s)."),
                CommandOption.option(
                        "--effort",
                        Kind.WHOLE,
                        "N",
                        "Number of states to explore; gives the same plan on any machine."
                                + " Without --time, there is then no time limit."));
    }

    /**
     * Returns the goal that was given, if any.
     *
     * @throws CommandException if there is more than one
     */
    public static Optional<Goal> goal(CommandCall call) {
        List<Goal> goals = new ArrayList<>();
        if (call.has("--free")) {
            goals.add(new Goal.Free(call.values("--free").stream().distinct().toList()));
        }
        call.value("--reach").map(Goal.Reach::new).ifPresent(goals::add);
        if (call.has("--all")) {
            goals.add(new Goal.Teardown());
        }
        if (goals.size() > 1) {
            throw new CommandException(
                    "reseat: give one goal only: --free PART[,PART], --reach JOINT or --all.");
        }
        return goals.stream().findFirst();
    }

    /** Returns what is forbidden, required and permitted. */
    public static Rules rules(CommandCall call) {
        Rules rules = Rules.none();
        for (Wish wish : WISHES) {
            rules = wish.rule.apply(rules, call.values(wish.name));
        }
        return rules;
    }

    /**
     * Returns the effort limit: {@link Effort#DEFAULT} if none was given.
     *
     * @throws CommandException if a value cannot be used
     */
    public static Effort effort(CommandCall call) {
        Optional<Duration> time = call.value("--time").map(PlanOptions::time);
        if (!call.has("--effort")) {
            return new Effort(time.or(Effort.DEFAULT::time), OptionalLong.empty());
        }
        String given = call.value("--effort").orElseThrow();
        long states = Long.parseLong(given);
        if (states < 1) {
            throw new CommandException(
                    "reseat: --effort: found " + given + ", expected 1 or more.");
        }
        return new Effort(time, OptionalLong.of(states));
    }

    private static Duration time(String text) {
        Matcher parts = TIME.matcher(text);
        if (!parts.matches()) {
            throw new CommandException(
                    "reseat: --time: found \"" + text + "\", expected a time such as 20 s.");
        }
        double unit =
                switch (String.valueOf(parts.group(2))) {
                    case "ms" -> 1;
                    case "s" -> 1000;
                    case "min" -> 60_000;
                    default -> 3_600_000;
                };
        double ms = Double.parseDouble(String.valueOf(parts.group(1))) * unit;
        return Duration.ofMillis(Math.max(1, (long) ms));
    }
}
