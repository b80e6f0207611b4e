package reseat.console.command;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import reseat.plan.Effort;

/** Limits of the search. */
final class EffortArgs {

    @Option(
            names = "--time",
            paramLabel = "TIME",
            description = "Time limit, such as 500 ms, 20 s, 2 min (default: 5 s).")
    private @Nullable String time;

    @Option(
            names = "--effort",
            paramLabel = "N",
            description =
                    "Number of states to explore; gives the same plan on any machine. Without"
                            + " --time, there is then no time limit.")
    private @Nullable Long effort;

    Effort effort() {
        if (effort != null && effort < 1) {
            throw new BadInput("reseat: --effort: found " + effort + ", expected 1 or more.");
        }
        Optional<Duration> limit =
                time == null
                        ? effort == null ? Effort.DEFAULT.time() : Optional.empty()
                        : Optional.of(parse(time));
        return new Effort(limit, effort == null ? OptionalLong.empty() : OptionalLong.of(effort));
    }

    private static Duration parse(String text) {
        try {
            return Duration.ofMillis(Math.max(1, millis(text)));
        } catch (IllegalArgumentException e) {
            throw new BadInput(
                    "reseat: --time: found \"" + text + "\", expected a time such as 20 s.");
        }
    }

    private static long millis(String text) {
        java.util.regex.Matcher m =
                java.util.regex.Pattern.compile(
                                "\\s*([0-9]{1,7}(?:\\.[0-9]{1,3})?)\\s*(ms|s|min|h)\\s*")
                        .matcher(text);
        if (!m.matches()) {
            throw new IllegalArgumentException(text);
        }
        double unit =
                switch (String.valueOf(m.group(2))) {
                    case "ms" -> 1;
                    case "s" -> 1000;
                    case "min" -> 60_000;
                    default -> 3_600_000;
                };
        return (long) (Double.parseDouble(String.valueOf(m.group(1))) * unit);
    }
}
