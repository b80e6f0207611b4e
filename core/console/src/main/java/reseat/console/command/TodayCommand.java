package reseat.console.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import reseat.model.BadInputException;
import reseat.model.Device;
import reseat.model.Problem;
import reseat.model.State;
import reseat.plan.Effort;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.planner.Planner;
import reseat.stock.CanDo;
import reseat.stock.Reservation;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.stock.Today;

/** Says what can be done today with what the shop has. */
@Command(
        name = "today",
        description = {
            "Say whether a repair can be done today with what the shop has, or what is missing.",
            "Without a goal: which repairs are possible, of every part that can be ordered."
        },
        customSynopsis = {
            "reseat today STOCK FILE --free PART[,PART] [OPTIONS]",
            "       reseat today STOCK FILE [FILE ...] [OPTIONS]"
        },
        sortOptions = false,
        footer = {
            "",
            "Examples:",
            "  reseat today samples/stock/shop.yaml samples/tansy/tansy.yaml --free sensor",
            "  reseat today samples/stock/shop.yaml samples/quill/quill.yaml --free fan",
            "  reseat today samples/stock/shop.yaml samples/tansy/tansy.yaml  # exit 1",
            "",
            "It ends with 0 if all that was asked for can be done, with 1 if something is missing.",
            "--reserve takes what is needed for a job, all of it or nothing."
        })
final class TodayCommand implements Callable<Integer> {

    /** A catalogue is long, and most plans are found at once. */
    private static final Effort EACH = Effort.ofTime(Duration.ofSeconds(1));

    @Spec private CommandSpec spec;

    @Mixin private StockArgs stockArgs = new StockArgs();

    @Parameters(
            index = "1..*",
            arity = "1..*",
            paramLabel = "FILE",
            description = "Device files; several for a catalogue.")
    private List<Path> files = new ArrayList<>();

    @Option(
            names = "--variant",
            paramLabel = "ID",
            description = "Variant of the device; the base device if left out.")
    private @Nullable String variant;

    @Mixin private GoalArgs goal = new GoalArgs();
    @Mixin private RuleArgs rules = new RuleArgs();

    @Option(names = "--put-back", description = "The part goes back; no spare is needed for it.")
    private boolean putBack;

    @Mixin private StockArgs.Day day = new StockArgs.Day();

    @Option(
            names = "--warn",
            paramLabel = "DAYS",
            description = "Mark what expires within so many days (default: 30).")
    private int warn = 30;

    @Option(
            names = "--reserve",
            paramLabel = "ID",
            description = "Reserve what is needed, under an id of your own; needs --job.")
    private @Nullable String reserve;

    @Option(names = "--job", paramLabel = "ID", description = "Id of the job it is reserved for.")
    private @Nullable String job;

    @Mixin private EffortArgs effort = new EffortArgs();

    @Option(names = "--json", description = "Print it for other programs; see core/docs/stock.md.")
    private boolean json;

    @Override
    public Integer call() throws BadInputException {
        check();
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        List<Device> devices = new ArrayList<>();
        for (Path file : files) {
            devices.add(DeviceArgs.read(file, Optional.ofNullable(variant), err));
        }
        try (Stock stock = stockArgs.open(spec.commandLine().getErr());
                Thinking thinking = new Thinking(err, false)) {
            if (reserve != null && stock.reservation(reserve).isPresent()) {
                return reservedBefore(stock.reservation(reserve).get(), out);
            }
            Today today = Today.of(stock, day.day(), warn, new Planner());
            List<CanDo> answers =
                    goal.given()
                            ? List.of(today.canDo(repair(devices.get(0)), !putBack, thinking))
                            : today.catalogue(devices, effort(), thinking);
            boolean all = answers.stream().allMatch(CanDo::yes);
            Optional<Reservation> reserved =
                    all && reserve != null
                            ? Optional.of(stock.reserve(request(answers.get(0))))
                            : Optional.empty();
            if (json) {
                out.print(TodayJson.of(today, answers, reserved));
            } else if (goal.given()) {
                TodayText.one(answers.get(0), out);
                reserved.ifPresent(made -> out.println("Reserved as " + made.id() + "."));
            } else {
                TodayText.catalogue(answers, out);
            }
            out.flush();
            return all ? 0 : 1;
        } catch (StockException e) {
            if (e.kind() == StockException.Kind.SHORT) {
                err.println("reseat: somebody was faster: " + e.getMessage() + ".");
                err.flush();
                return 1;
            }
            throw StockArgs.refused(e);
        }
    }

    private void check() {
        if (goal.given() && files.size() > 1) {
            throw new BadInput("reseat: one device at a time with a goal.");
        }
        if (warn < 0) {
            throw new BadInput("reseat: --warn: found " + warn + ", expected 0 or more.");
        }
        if ((reserve == null) != (job == null)) {
            throw new BadInput("reseat: --reserve ID and --job ID go together.");
        }
        if (reserve != null && (!goal.given() || reserve.isBlank())) {
            throw new BadInput("reseat: --reserve needs an id and a goal, such as --free PART.");
        }
    }

    private Effort effort() {
        return effort.effort().equals(Effort.DEFAULT) ? EACH : effort.effort();
    }

    private PlanRequest repair(Device device) {
        PlanRequest repair =
                new PlanRequest(
                        device, goal.goal(), State.closed(), rules.rules(), effort.effort());
        List<Problem> wrong = repair.problems();
        if (!wrong.isEmpty()) {
            throw new BadInput(Planned.failure(repair, new PlanResult.Refused(wrong)));
        }
        return repair;
    }

    private Reservation.Request request(CanDo answer) {
        List<Reservation.Pick> picks = answer.availability().orElseThrow().picks();
        if (picks.isEmpty()) {
            throw new BadInput("reseat: this repair needs nothing from the stock to reserve.");
        }
        return new Reservation.Request(String.valueOf(reserve), String.valueOf(job), picks);
    }

    /** A repeated command finds what it did; working it out anew would count it as taken. */
    private int reservedBefore(Reservation known, PrintWriter out) {
        if (!known.request().job().equals(job)) {
            throw new BadInput(
                    "reseat: the id \""
                            + known.id()
                            + "\" stands for a reservation of job "
                            + known.request().job()
                            + "; take another id.");
        }
        if (!json) {
            out.println("This was reserved before:");
        }
        Reserved.print(known, json, out);
        return 0;
    }
}
