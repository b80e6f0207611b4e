package reseat.euindex;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Kind;
import reseat.plan.Plan;

/** The way to one part, as the method counts it. */
final class Path {

    private final Device device;
    private final List<CostedAct> acts;
    private final Statements stated;

    Path(Plan plan, Statements stated) {
        this.device = plan.request().device();
        this.acts = plan.acts();
        this.stated = stated;
    }

    /**
     * Returns the operations. An operation ends when parts were moved, or when the tool is changed;
     * picking up the first tool or putting one down does not end it. Prepare acts take nothing
     * apart and do not count.
     */
    List<Operation> operations() {
        List<Operation> operations = new ArrayList<>();
        String tool = device.hand();
        boolean open = false;
        for (CostedAct act : acts) {
            if (act.act() instanceof Act.Prepared) {
                continue;
            }
            if (!act.tool().equals(device.hand())) {
                if (open && !tool.equals(device.hand()) && !tool.equals(act.tool())) {
                    operations.add(operation(tool, Operation.End.TOOL_CHANGED));
                }
                tool = act.tool();
            } else if (!open) {
                tool = device.hand();
            }
            warmer(act).ifPresent(by -> operations.add(operation(by, Operation.End.HEATED)));
            open = true;
            if (act.act() instanceof Act.MoveParts) {
                operations.add(operation(tool, Operation.End.REMOVED));
                open = false;
                tool = device.hand();
            }
            if (act.act() instanceof Act.Release release
                    && stated.cleaned().contains(release.joint())) {
                operations.add(operation(act.tool(), Operation.End.CLEANED));
            }
        }
        if (open) { // the last joint freed the part, without a further act
            operations.add(operation(tool, Operation.End.REMOVED));
        }
        return operations;
    }

    private Operation operation(String tool, Operation.End end) {
        return new Operation(tool.equals(device.hand()) ? List.of() : List.of(tool), end);
    }

    /** Returns the acts after the last one that moved one of these parts, without the target. */
    private List<CostedAct> since(Set<String> priorityParts, String target) {
        int from = 0;
        for (int i = 0; i < acts.size(); i++) {
            if (acts.get(i).act() instanceof Act.MoveParts move
                    && !move.parts().contains(target)
                    && move.parts().stream().anyMatch(priorityParts::contains)) {
                from = i + 1;
            }
        }
        return acts.subList(from, acts.size());
    }

    /** Returns the joints released since the priority part before this one, with their ways. */
    List<Act.Release> fastenersMet(Set<String> priorityParts, String target) {
        return since(priorityParts, target).stream()
                .map(CostedAct::act)
                .filter(Act.Release.class::isInstance)
                .map(Act.Release.class::cast)
                .toList();
    }

    /** Returns the tools used since the priority part before this one; bare hands do not count. */
    Set<String> toolsUsed(Set<String> priorityParts, String target) {
        Set<String> tools = new LinkedHashSet<>();
        for (CostedAct act : since(priorityParts, target)) {
            if (act.act() instanceof Act.Prepared) {
                continue;
            }
            if (!act.tool().equals(device.hand())) {
                tools.add(act.tool());
            }
            warmer(act).ifPresent(tools::add);
        }
        return tools;
    }

    /** Returns the joints that are warmed because their way puts heat to the device. */
    List<String> warmedByWay() {
        return acts.stream()
                .map(CostedAct::act)
                .filter(Act.Release.class::isInstance)
                .map(Act.Release.class::cast)
                .filter(release -> heat(release).isPresent())
                .map(Act.Release::joint)
                .toList();
    }

    /** Returns the tool that warms for an act; empty if nothing is warmed. */
    private Optional<String> warmer(CostedAct act) {
        if (!(act.act() instanceof Act.Release release)) {
            return Optional.empty();
        }
        if (heat(release).isPresent()) {
            String source = heat(release).get().source();
            return Optional.of(device.tools().containsKey(source) ? source : stated.warmedWith());
        }
        return stated.warmed().contains(release.joint())
                ? Optional.of(stated.warmedWith())
                : Optional.empty();
    }

    private Optional<Kind.Heat> heat(Act.Release release) {
        return Optional.ofNullable(device.joint(release.joint()).ways().get(release.way()))
                .flatMap(way -> device.manipulation(way.kind()).heat());
    }
}
