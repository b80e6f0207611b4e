package reseat.plan;

import java.util.List;
import reseat.model.ConsumableUse;
import reseat.model.Device;
import reseat.model.State;

/**
 * How a unit is put together again after a teardown. It has an order of its own: read backwards,
 * and without beds, waits and tests, it is a valid teardown that ends where the plan does, and
 * among all orders of that kind it has the least set-ups.
 *
 * <p>Beyond that: a bed is laid while its site can be reached, before the placing that covers it;
 * the isolators of a supply are closed after everything that needs it cut; what cannot be opened
 * again or has to rest is closed as late as possible, after every test that can be made before;
 * nothing is switched on while an isolator is open or a flammable cleaner is wet; leak tests come
 * last.
 *
 * <p>Tools: screws and moves use the tool of the teardown, connectors, hooks and fits too;
 * adhesives and snaps are pressed on by hand.
 *
 * @param acts the acts in order
 * @param setupBoundMs no valid order has less set-ups than this, in milliseconds
 * @param ended why the search for the order ended
 * @param end where it leaves the unit: closed, or as it arrived if that was asked for
 * @param fastenings screws that go in together, in order; every screw of the rebuild with a seat is
 *     in exactly one
 * @param tests the tests, in the order in which they are made
 * @param consumables what is used up, added up by consumable and unit, in order of first use
 * @param spares what to have in stock
 * @param wear joints with a limited number of cycles, in order
 * @param broken what it could not keep of the rules beyond a valid order, as sentences that a
 *     technician has to know; empty if it keeps them all
 */
public record Rebuild(
        Device device,
        List<RebuildAct> acts,
        long setupBoundMs,
        Plan.Ended ended,
        State end,
        List<Fastening> fastenings,
        List<PlacedTest> tests,
        List<ConsumableUse> consumables,
        List<SpareNeed> spares,
        List<Wear> wear,
        List<String> broken) {

    public Rebuild {
        acts = List.copyOf(acts);
        fastenings = List.copyOf(fastenings);
        tests = List.copyOf(tests);
        consumables = List.copyOf(consumables);
        spares = List.copyOf(spares);
        wear = List.copyOf(wear);
        broken = List.copyOf(broken);
    }

    /**
     * Returns a rebuild of acts in their order, with what follows from them.
     *
     * @param plan the plan that it undoes
     * @param acts the acts in order
     * @param setupBoundMs no valid order has less set-ups than this, in milliseconds
     * @param ended why the search for the order ended
     * @param end where it leaves the unit
     */
    public static Rebuild of(
            Plan plan, List<RebuildAct> acts, long setupBoundMs, Plan.Ended ended, State end) {
        RebuildNeeds needs = new RebuildNeeds(plan, acts);
        Device device = plan.request().device();
        return new Rebuild(
                device,
                acts,
                setupBoundMs,
                ended,
                end,
                new Fastenings(device, acts).all(),
                needs.tests(),
                needs.consumables(),
                needs.spares(),
                needs.wear(),
                List.of());
    }

    /** Returns the same rebuild, with what it could not keep, as sentences. */
    public Rebuild withBroken(List<String> sentences) {
        return new Rebuild(
                device,
                acts,
                setupBoundMs,
                ended,
                end,
                fastenings,
                tests,
                consumables,
                spares,
                wear,
                sentences);
    }

    /** Returns ids of joints that it leaves open because they were when the unit arrived. */
    public List<String> leftOpen() {
        return List.copyOf(end.released());
    }

    /** Returns ids of parts that it leaves apart because they were when the unit arrived. */
    public List<String> leftApart() {
        Stand stand = Stand.of(device, end);
        return device.parts().keySet().stream().filter(part -> !stand.withBase(part)).toList();
    }

    /** Returns whether no valid order has less set-ups. */
    public boolean proved() {
        return setupBoundMs == setupMs();
    }

    /** Returns (set-ups - bound) / set-ups, from 0 to 1; 0 for a proved order. */
    public double gap() {
        return setupMs() == 0 ? 0 : (setupMs() - setupBoundMs) / (double) setupMs();
    }

    /** Returns the time of the rebuild in milliseconds: acts and set-ups; waiting is apart. */
    public long totalMs() {
        return restoreMs() + setupMs();
    }

    /**
     * Returns the time of the acts; it is part of the cost of the plan, but for acts that close
     * what was open when the unit arrived.
     */
    public long restoreMs() {
        return acts.stream().mapToLong(RebuildAct::ms).sum();
    }

    /** Returns the time of the set-ups; it is not part of the cost of the plan. */
    public long setupMs() {
        return acts.stream().mapToLong(RebuildAct::setupMs).sum();
    }

    /** Returns the waiting times, one after the other; they are not part of the cost. */
    public long dwellMs() {
        return acts.stream().mapToLong(RebuildAct::dwellMs).sum();
    }
}
