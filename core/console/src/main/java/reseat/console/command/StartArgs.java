package reseat.console.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import reseat.files.PlanFile;
import reseat.files.PlanFiles;
import reseat.model.Act;
import reseat.model.BadInputException;
import reseat.model.Device;
import reseat.model.State;
import reseat.simulate.Simulator;
import reseat.simulate.Verdict;

/** The state of the unit before the work; a closed device by default. */
final class StartArgs {

    @Option(
            names = "--start",
            paramLabel = "STATE.json",
            description =
                    "The unit is half open: a file with {\"released\": [JOINT...], \"places\":"
                            + " [[PART...]...], \"prepared\": [ACT...]}.")
    private @Nullable Path state;

    @Option(
            names = "--done",
            paramLabel = "ACT",
            split = ",",
            description = "The unit is half open: these acts are already done, in this order.")
    private List<String> done = new ArrayList<>();

    @Option(
            names = "--after",
            paramLabel = "PLAN.json:N",
            description = "The unit is half open: the first N acts of this plan are done.")
    private @Nullable String after;

    State start(Device device) throws BadInputException {
        int given = (state == null ? 0 : 1) + (done.isEmpty() ? 0 : 1) + (after == null ? 0 : 1);
        if (given > 1) {
            throw new BadInput("reseat: give one of --start, --done and --after.");
        }
        if (state != null) {
            return checked(device, PlanFiles.readState(state));
        }
        if (after != null) {
            return after(device, after);
        }
        List<Act> acts = new ArrayList<>();
        for (String id : done) {
            try {
                acts.add(Act.parse(id));
            } catch (IllegalArgumentException e) {
                throw new BadInput("reseat: --done: " + e.getMessage());
            }
        }
        return acts.isEmpty() ? State.closed() : end(device, State.closed(), acts, "--done");
    }

    private static State after(Device device, String text) throws BadInputException {
        int colon = text.lastIndexOf(':');
        String number = text.substring(colon + 1);
        if (colon < 1 || !number.matches("[0-9]{1,6}")) {
            throw new BadInput(
                    "reseat: --after: found \""
                            + text
                            + "\", expected a plan file, a colon and how many of its acts are"
                            + " done: plan.json:5");
        }
        PlanFile plan = PlanFiles.readPlan(Path.of(text.substring(0, colon)));
        int n = Integer.parseInt(number);
        if (n > plan.acts().size()) {
            throw new BadInput(
                    "reseat: --after: the plan has "
                            + plan.acts().size()
                            + " acts, not "
                            + n
                            + ".");
        }
        List<Act> acts = plan.acts().subList(0, n);
        return acts.isEmpty()
                ? plan.start()
                : end(device, checked(device, plan.start()), acts, "--after");
    }

    private static State end(Device device, State start, List<Act> done, String option) {
        List<Act> acts = new ArrayList<>();
        if (done.stream().noneMatch(act -> act instanceof Act.Prepared)) {
            device.prepares().keySet().stream()
                    .filter(id -> !start.prepared().contains(id))
                    .forEach(id -> acts.add(new Act.Prepared(id)));
        }
        int added = acts.size();
        acts.addAll(done);
        Verdict verdict = Simulator.simulate(device, start, acts);
        if (verdict.refusal().isPresent()) {
            int at = verdict.refusal().get().index() - added;
            throw new BadInput(
                    "reseat: "
                            + option
                            + ": act "
                            + (at + 1)
                            + ", "
                            + done.get(Math.max(at, 0)).id()
                            + ", cannot have been done. "
                            + verdict.refusal().get().why());
        }
        State end = verdict.end();
        // what was only added here has not been done
        return added == 0 ? end : new State(end.released(), end.places(), start.prepared());
    }

    static State checked(Device device, State start) {
        List<String> faults = Simulator.faultsOf(device, start);
        if (!faults.isEmpty()) {
            throw new BadInput("reseat: no unit can be in this state. " + String.join(" ", faults));
        }
        return start;
    }
}
