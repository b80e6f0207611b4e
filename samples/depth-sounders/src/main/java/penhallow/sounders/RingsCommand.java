package penhallow.sounders;

import java.util.List;
import java.util.Optional;
import reseat.model.Act;
import reseat.model.ConsumableUse;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Joint;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.spi.Command;
import reseat.spi.CommandCall;
import reseat.spi.CommandInfo;
import reseat.spi.CommandOption;
import reseat.spi.CommandOption.Kind;

/** Lists the O-rings to have ready before a sounder is opened. */
final class RingsCommand implements Command {

    @Override
    public String name() {
        return "rings";
    }

    @Override
    public CommandInfo info() {
        return CommandInfo.of("List the O-rings to have ready before a sounder is opened.")
                .taking(
                        CommandOption.parameter("FILE", Kind.DEVICE, "Device file of the sounder."),
                        CommandOption.option("--free", Kind.PART, "PART", "The part that comes out.")
                                .asRequired())
                .withExamples("reseat rings curlew.yaml --free cell");
    }

    @Override
    public int run(CommandCall call) {
        Device device = call.device(call.path("FILE"), Optional.empty(), Optional.empty());
        Goal goal = new Goal.Free(call.values("--free"));
        PlanResult result = call.plans().plan(PlanRequest.of(device, goal), call.watch());
        if (result instanceof PlanResult.Found found) {
            found.plan().acts().forEach(each -> print(device, each, call));
            return FINE;
        }
        call.err().println("reseat: there is no plan for it; reseat why explains.");
        return FINDINGS;
    }

    private static void print(Device device, CostedAct costed, CommandCall call) {
        if (costed.act() instanceof Act.Release release) {
            Joint joint = device.joint(release.joint());
            List<ConsumableUse> uses = joint.ways().get(release.way()).consumes();
            uses.stream()
                    .filter(use -> use.consumable().startsWith("o-ring"))
                    .forEach(use -> call.line(use.consumable() + "  for " + joint.name()));
        }
    }
}
