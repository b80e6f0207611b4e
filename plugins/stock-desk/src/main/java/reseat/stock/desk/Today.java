package reseat.stock.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Part;
import reseat.model.Rules;
import reseat.plan.Effort;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.plan.Plans;
import reseat.plan.Watch;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.stock.StockItem;

/**
 * Determines which repairs a stock allows on a day. It uses a snapshot of the stock and considers
 * each repair separately, as if it were the only one.
 *
 * @param items the lines of the stock
 * @param day the day of the work
 * @param warnDays what expires within this many days from then is marked; zero or more
 * @param plans creates the plan of each repair
 */
record Today(List<StockItem> items, LocalDate day, int warnDays, Plans plans) {

    /** How often to look for a plan that avoids what is missing. */
    private static final int DETOURS = 3;

    public Today {
        items = List.copyOf(items);
        if (warnDays < 0) {
            throw new IllegalArgumentException(
                    "the number of days to warn must not be negative: " + warnDays);
        }
    }

    /** Creates the query. */
    public static Today of(Stock stock, LocalDate day, int warnDays, Plans plans)
            throws StockException {
        return new Today(stock.items(), day, warnDays, plans);
    }

    /**
     * Evaluates one repair: plans it and compares its needs with the stock. If the best plan needs
     * what is missing, it looks a few times for another plan that avoids it.
     *
     * @param repair the device and what to achieve
     * @param replace whether the parts that it frees are replaced instead of put back
     * @param watch receives the planner's progress and may cancel
     * @return the answer for the best plan that can be done; if there is none, for the best plan
     */
    public CanDo canDo(PlanRequest repair, boolean replace, Watch watch) {
        CanDo best = judged(repair, replace, List.of(), watch);
        CanDo answer = best;
        List<StockNeed> avoided = new ArrayList<>();
        for (int round = 0; round < DETOURS && !answer.yes() && !watch.cancelled(); round++) {
            List<Availability.Line> missing =
                    answer.availability().map(Availability::missing).orElse(List.of());
            Optional<Rules> without =
                    Detour.around(repair.device(), answer.request().rules(), missing);
            if (missing.isEmpty() || without.isEmpty()) {
                return best;
            }
            missing.forEach(line -> avoided.add(line.need()));
            answer = judged(repair.with(without.get()), replace, avoided, watch);
        }
        return answer.yes() ? answer : best;
    }

    private CanDo judged(
            PlanRequest repair, boolean replace, List<StockNeed> avoided, Watch watch) {
        PlanResult result = plans.plan(repair, watch);
        if (result instanceof PlanResult.Found found) {
            Plan plan = found.plan();
            return new CanDo(
                    repair,
                    Optional.of(plan),
                    Optional.of(
                            Availability.of(StockNeeds.of(plan, replace), items, day, warnDays)),
                    avoided,
                    List.of());
        }
        return new CanDo(repair, Optional.empty(), Optional.empty(), avoided, result.reasons());
    }

    /**
     * Evaluates the whole catalogue: every part of every device that can be ordered.
     *
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
}
