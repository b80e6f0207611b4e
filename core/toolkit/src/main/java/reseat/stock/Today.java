package reseat.stock;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Part;
import reseat.model.Problem;
import reseat.plan.Effort;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.plan.Planner;
import reseat.plan.Watch;

/**
 * Answers what can be done on a day with what a stock has. Looks at a stock as it was seen; each
 * repair is asked for by itself, as if it were the only one.
 *
 * @param items what there is
 * @param day the day of the work
 * @param warnDays what expires within so many days from then is marked; zero or more
 */
public record Today(List<StockItem> items, LocalDate day, int warnDays) {

    public Today {
        items = List.copyOf(items);
        if (warnDays < 0) {
            throw new IllegalArgumentException("days to warn are zero or more: " + warnDays);
        }
    }

    /** Looks into a stock. */
    public static Today of(Stock stock, LocalDate day, int warnDays) throws StockException {
        return new Today(stock.items(), day, warnDays);
    }

    /**
     * Asks for one repair: plans it and compares what the plan needs with what there is.
     *
     * @param repair the device and what to achieve
     * @param replace whether the parts that it frees are replaced, and not put back
     * @param watch hears how the planner goes and may cancel
     */
    public CanDo canDo(PlanRequest repair, boolean replace, Watch watch) {
        PlanResult result = new Planner().plan(repair, watch);
        if (result instanceof PlanResult.Found found) {
            Plan plan = found.plan();
            return new CanDo(
                    repair,
                    Optional.of(plan),
                    Optional.of(
                            Availability.of(StockNeeds.of(plan, replace), items, day, warnDays)),
                    List.of());
        }
        return new CanDo(repair, Optional.empty(), Optional.empty(), reasons(result));
    }

    /**
     * Asks for the whole catalogue: every part of every device that can be ordered.
     *
     * @param devices the devices
     * @param effort how long to think about each repair
     * @param watch hears how the planner goes; when it cancels, the repairs so far are returned
     * @return one answer for each, in the order of the devices and of their parts
     */
    public List<CanDo> catalogue(List<Device> devices, Effort effort, Watch watch) {
        List<CanDo> answers = new ArrayList<>();
        for (Device device : devices) {
            for (String part : targets(device)) {
                if (watch.cancelled()) {
                    return List.copyOf(answers);
                }
                PlanRequest repair = PlanRequest.of(device, new Goal.Free(List.of(part)));
                answers.add(canDo(repair.with(effort), true, watch));
            }
        }
        return List.copyOf(answers);
    }

    /** Returns the parts that make up the catalogue of a device: those that can be ordered. */
    public static List<String> targets(Device device) {
        return device.parts().values().stream()
                .filter(part -> part.spare().isPresent())
                .map(Part::id)
                .filter(id -> !id.equals(device.base()))
                .toList();
    }

    private static List<String> reasons(PlanResult result) {
        if (result instanceof PlanResult.Impossible impossible) {
            return impossible.reasons();
        }
        if (result instanceof PlanResult.Refused refused) {
            return refused.problems().stream().map(Problem::message).toList();
        }
        return List.of("No plan was found before the time to think was up");
    }
}
