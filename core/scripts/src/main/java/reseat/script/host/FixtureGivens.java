package reseat.script.host;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import reseat.check.CheckInput;
import reseat.files.DeviceFiles;
import reseat.files.Reading;
import reseat.job.Job;
import reseat.model.BadInputException;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Origin;
import reseat.model.Problem;
import reseat.plan.Effort;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.planner.Planner;
import reseat.spi.DeviceFamily;
import reseat.stock.StockItem;

/** The further input of a fixture, one line each; see core/docs/scripts.md. */
final class FixtureGivens {

    private static final long EXPANSIONS = 200_000;

    private final Path file;
    private final String check;
    private final List<DeviceFamily> families;
    private final List<Given> givens = new ArrayList<>();

    private record Given(int line, String key, String value) {}

    FixtureGivens(Path file, String check, List<DeviceFamily> families) {
        this.file = file;
        this.check = check;
        this.families = families;
    }

    void add(int line, String text) throws BadInputException {
        int colon = text.indexOf(':');
        if (colon < 0) {
            throw wrong(line, "expected GIVEN KEY: VALUE");
        }
        givens.add(
                new Given(
                        line, text.substring(0, colon).strip(), text.substring(colon + 1).strip()));
    }

    CheckInput input() throws BadInputException {
        Optional<String> variant =
                givens.stream().filter(g -> g.key.equals("variant")).map(Given::value).findFirst();
        Reading base = DeviceFiles.read(file, Optional.empty(), families);
        List<Device> variants = new ArrayList<>();
        variants.add(base.orThrow());
        for (String id : base.variants()) {
            variants.add(DeviceFiles.read(file, Optional.of(id), families).orThrow());
        }
        Device device =
                variants.stream()
                        .filter(d -> d.variant().equals(variant))
                        .findFirst()
                        .orElseThrow();
        CheckInput input = CheckInput.of(device).withVariants(variants);
        for (Given given : givens) {
            try {
                input = with(input, given);
            } catch (IllegalArgumentException | DateTimeException e) {
                throw wrong(given.line, String.valueOf(e.getMessage()));
            }
        }
        return input;
    }

    private CheckInput with(CheckInput input, Given given) throws BadInputException {
        return switch (given.key) {
            case "variant" -> input;
            case "plan" -> plan(input, given);
            case "stock" -> stock(input, given);
            case "drives" -> input.withDrives(List.of(given.value.split("\\s*,\\s*", -1)));
            case "job" -> input.withJob(job(input, given));
            case "today" -> input.on(LocalDate.parse(given.value));
            case "set" -> {
                String[] words = given.value.split("\\s+", 2);
                yield input.set(check, words[0], words.length == 2 ? words[1] : "");
            }
            default ->
                    throw wrong(
                            given.line,
                            "unknown key \""
                                    + given.key
                                    + "\"; known: variant, plan, stock, drives, job, today, set");
        };
    }

    private CheckInput plan(CheckInput input, Given given) throws BadInputException {
        String[] words = given.value.split("\\s+", 2);
        Goal goal =
                switch (words[0]) {
                    case "all" -> new Goal.Teardown();
                    case "free" -> new Goal.Free(List.of(words[1].split("\\s*,\\s*", -1)));
                    case "reach" -> new Goal.Reach(words[1]);
                    default ->
                            throw wrong(
                                    given.line, "expected a plan: free PART, reach JOINT, or all");
                };
        PlanResult result =
                new Planner()
                        .plan(
                                PlanRequest.of(input.device(), goal)
                                        .with(Effort.ofExpansions(EXPANSIONS)));
        return input.withPlan(
                result.best()
                        .orElseThrow(
                                () ->
                                        wrong(
                                                given.line,
                                                "there is no plan: "
                                                        + String.join("; ", result.reasons()))));
    }

    /** {@code consumable tape-5 40 mm until 2026-01-31; tool t6 1 piece}. */
    private CheckInput stock(CheckInput input, Given given) {
        List<StockItem> items = new ArrayList<>(input.stock().orElse(List.of()));
        for (String item : given.value.split("\\s*;\\s*", -1)) {
            String[] words = item.split("\\s+", -1);
            if (words.length != 4 && !(words.length == 6 && words[4].equals("until"))) {
                throw new IllegalArgumentException(
                        "expected a line of stock: KIND ID QUANTITY UNIT [until DAY]");
            }
            items.add(
                    new StockItem(
                            "line-" + (items.size() + 1),
                            StockItem.Kind.valueOf(words[0].toUpperCase(Locale.ROOT)),
                            words[1],
                            List.of(words[1]),
                            new BigDecimal(words[2]),
                            BigDecimal.ZERO,
                            words[3],
                            Optional.empty(),
                            words.length == 6
                                    ? Optional.of(LocalDate.parse(words[5]))
                                    : Optional.empty(),
                            Optional.empty()));
        }
        return input.withStock(items);
    }

    /** {@code fan-plug 19, lid-plug 3}: how often joints of the unit have been made. */
    private static Job job(CheckInput input, Given given) {
        Map<String, Integer> cycles = new LinkedHashMap<>();
        for (String each : given.value.split("\\s*,\\s*", -1)) {
            String[] words = each.split("\\s+", -1);
            input.device().joint(words[0]);
            cycles.put(words[0], Integer.valueOf(words[1]));
        }
        return new Job("fixture", "fixture", input.device().id(), input.device().variant(), cycles);
    }

    private BadInputException wrong(int line, String message) {
        return new BadInputException(Problem.error(new Origin(file.toString(), line, 0), message));
    }
}
