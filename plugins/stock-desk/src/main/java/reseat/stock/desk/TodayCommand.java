package reseat.stock.desk;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import reseat.model.BadInputException;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Problem;
import reseat.model.State;
import reseat.plan.Effort;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.plan.Plans;
import reseat.spi.Command;
import reseat.spi.CommandCall;
import reseat.spi.CommandException;
import reseat.spi.CommandInfo;
import reseat.spi.CommandOption;
import reseat.spi.CommandOption.Kind;
import reseat.spi.PlanOptions;
import reseat.stock.Reservation;
import reseat.stock.Stock;
import reseat.stock.StockException;

/** Lists the repairs that can be done today with the shop's stock. */
final class TodayCommand implements Command {

    /** Many devices take long, and most plans are found quickly. */
    private static final Effort EACH = Effort.ofTime(Duration.ofSeconds(1));

    @Override
    public String name() {
        return "today";
    }

    @Override
    public CommandInfo info() {
        return CommandInfo.of(
                        "Check whether a repair can be done today with the shop's stock, or what"
                                + " is missing.",
                        "Without a goal: list the possible repairs, for every part that can be"
                                + " ordered.")
                .calledAs(
                        "today STOCK FILE --free PART[,PART] [OPTIONS]",
                        "today STOCK FILE [FILE ...] [OPTIONS]")
                .taking(
                        StockArgs.STOCK,
                        CommandOption.parameter(
                                        "FILE",
                                        Kind.DEVICE,
                                        "Device files; give several for an overview.")
                                .asRepeatable(),
                        CommandOption.option(
                                "--variant",
                                Kind.ID,
                                "ID",
                                "Variant of the device (default: the base device)."))
                .taking(PlanOptions.forGoal())
                .taking(PlanOptions.forRules())
                .taking(
                        CommandOption.flag(
                                "--put-back", "The part goes back; no spare is needed for it."),
                        StockArgs.TODAY,
                        CommandOption.option(
                                        "--warn",
                                        Kind.WHOLE,
                                        "DAYS",
                                        "Mark what expires within this number of days.")
                                .orElse("30"),
                        CommandOption.option(
                                "--reserve",
                                Kind.ID,
                                "ID",
                                "Reserve what is needed, under an id of your choice; requires"
                                        + " --job."),
                        CommandOption.option(
                                "--job", Kind.ID, "ID", "Id of the job it is reserved for."))
                .taking(PlanOptions.forEffort())
                .taking(StockArgs.JSON)
                .withExamples(
                        "reseat today samples/stock/shop.yaml samples/tansy/tansy.yaml --free sensor",
                        "reseat today samples/stock/shop.yaml samples/quill/quill.yaml --free fan",
                        "reseat today samples/stock/shop.yaml samples/tansy/tansy.yaml  # exit 1")
                .withNotes(
                        "Exit code 0: all requested repairs can be done. 1: something is missing.",
                        "--reserve reserves all that is needed for a job, or nothing.");
    }

    @Override
    public int run(CommandCall call) throws BadInputException {
        Optional<Goal> goal = PlanOptions.goal(call);
        int warn = warn(call);
        check(call, goal);
        List<Device> devices = new ArrayList<>();
        for (Path file : call.paths("FILE")) {
            devices.add(call.device(file, call.value("--variant"), Optional.empty()));
        }
        try (Stock stock = StockArgs.open(call)) {
            Optional<String> reserve = call.value("--reserve");
            if (reserve.isPresent()) {
                Optional<Reservation> before = stock.reservation(reserve.get());
                if (before.isPresent()) {
                    return reservedBefore(before.get(), call);
                }
            }
            return goal.isPresent()
                    ? one(repair(devices.get(0), goal.get(), call), warn, stock, call)
                    : catalogue(devices, warn, stock, call);
        } catch (StockException e) {
            if (e.kind() == StockException.Kind.SHORT) {
                call.err()
                        .println(
                                "reseat: the stock changed in the meantime: "
                                        + e.getMessage()
                                        + ".");
                return FINDINGS;
            }
            throw StockArgs.refused(e);
        }
    }

    private static int one(PlanRequest repair, int warn, Stock stock, CommandCall call)
            throws StockException {
        Today today = Today.of(stock, StockArgs.day(call), warn, refusing(repair, call.plans()));
        CanDo answer = today.canDo(repair, !call.has("--put-back"), call.watch());
        Optional<Reservation> reserved =
                answer.yes() && call.has("--reserve")
                        ? Optional.of(stock.reserve(request(answer, call)))
                        : Optional.empty();
        if (call.has("--json")) {
            call.out().print(TodayJson.of(today, List.of(answer), reserved));
        } else {
            new TodayText(call).one(answer);
            reserved.ifPresent(made -> call.out().println("Reserved as " + made.id() + "."));
        }
        return answer.yes() ? FINE : FINDINGS;
    }

    private static int catalogue(List<Device> devices, int warn, Stock stock, CommandCall call)
            throws StockException {
        Effort given = PlanOptions.effort(call);
        Effort each = given.equals(Effort.DEFAULT) ? EACH : given;
        Today today = Today.of(stock, StockArgs.day(call), warn, call.plans());
        List<CanDo> answers = today.catalogue(devices, each, call.watch());
        if (call.has("--json")) {
            call.out().print(TodayJson.of(today, answers, Optional.empty()));
        } else {
            new TodayText(call).catalogue(answers);
        }
        return answers.stream().allMatch(CanDo::yes) ? FINE : FINDINGS;
    }

    /** A repair that makes no sense for a device is not reported as impossible today. */
    private static Plans refusing(PlanRequest repair, Plans plans) {
        return (request, watch) -> {
            PlanResult result = plans.plan(request, watch);
            if (request.rules().equals(repair.rules())
                    && result instanceof PlanResult.Refused refused) {
                throw new CommandException(
                        refused.problems().stream()
                                .map(Problem::message)
                                .map(message -> "reseat: " + message + ".")
                                .collect(Collectors.joining("\n")));
            }
            return result;
        };
    }

    private static int warn(CommandCall call) {
        String given = call.value("--warn").orElseThrow();
        long days = Long.parseLong(given);
        if (days < 0) {
            throw new CommandException("reseat: --warn: found " + given + ", expected 0 or more.");
        }
        return (int) Math.min(days, Integer.MAX_VALUE);
    }

    private static void check(CommandCall call, Optional<Goal> goal) {
        if (goal.isPresent() && call.values("FILE").size() > 1) {
            throw new CommandException("reseat: with a goal, give exactly one device.");
        }
        Optional<String> reserve = call.value("--reserve");
        if (reserve.isPresent() != call.has("--job")) {
            throw new CommandException("reseat: --reserve ID and --job ID go together.");
        }
        if (reserve.isPresent() && (goal.isEmpty() || reserve.get().isBlank())) {
            throw new CommandException(
                    "reseat: --reserve needs an id and a goal, such as --free PART.");
        }
    }

    private static PlanRequest repair(Device device, Goal goal, CommandCall call) {
        return new PlanRequest(
                device, goal, State.closed(), PlanOptions.rules(call), PlanOptions.effort(call));
    }

    private static Reservation.Request request(CanDo answer, CommandCall call) {
        List<Reservation.Pick> picks = answer.availability().orElseThrow().picks();
        if (picks.isEmpty()) {
            throw new CommandException(
                    "reseat: this repair needs nothing from the stock to reserve.");
        }
        return new Reservation.Request(
                call.value("--reserve").orElseThrow(), call.value("--job").orElseThrow(), picks);
    }

    /** A repeated command finds its own reservation; computing it again would count it as taken. */
    private static int reservedBefore(Reservation known, CommandCall call) {
        if (!Optional.of(known.request().job()).equals(call.value("--job"))) {
            throw new CommandException(
                    "reseat: the id \""
                            + known.id()
                            + "\" already belongs to a reservation of job "
                            + known.request().job()
                            + "; choose another id.");
        }
        if (!call.has("--json")) {
            call.out().println("Already reserved:");
        }
        Reserved.print(known, call.has("--json"), call.out());
        return FINE;
    }
}
