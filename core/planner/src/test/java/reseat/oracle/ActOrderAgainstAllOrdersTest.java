package reseat.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.SetupTable;
import reseat.plan.Effort;
import reseat.plan.Watch;
import reseat.planner.ActOrder;
import reseat.planner.OrderAnswer;
import reseat.planner.OrderItem;
import reseat.planner.OrderRequest;
import reseat.simulate.Simulator;
import reseat.simulate.Verdict;

/**
 * On small random devices the order found has the least set-ups of all orders that the simulator
 * allows, and where none is found none is allowed: for acts in an order that works, in a random
 * order, and for rebuilds, with other items and pairs among them.
 */
class ActOrderAgainstAllOrdersTest {

    private static final int DEVICES = 200;
    private static final int MOST_ACTS = 5;

    private int possible;
    private int impossible;
    private int better;
    private int aside;
    private int proved;

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void findsTheLeastSetupsOfAllOrders(boolean rebuild) {
        Map<Long, AssertionError> failures = new TreeMap<>();
        int devices = Seeds.devices(DEVICES);
        for (long seed = Seeds.first();
                seed < Seeds.first() + devices && !Seeds.enough(failures);
                seed++) {
            long each = seed;
            Seeds.check(getClass(), seed, s -> compare(s, rebuild))
                    .ifPresent(e -> failures.put(each, e));
        }
        Seeds.report(failures);
        System.out.printf(
                "Orders of acts: %d possible, %d of them better than given; %d impossible; where"
                        + " laying aside costs, %d of %d proved%n",
                possible, better, impossible, proved, aside);
        if (devices == DEVICES) {
            assertTrue(possible > DEVICES / 3, () -> possible + " possible");
            assertTrue(impossible > DEVICES / 50, () -> impossible + " impossible");
            assertTrue(better > DEVICES / 20, () -> better + " better than given");
        }
    }

    private void compare(long seed, boolean rebuild) {
        Case of = RandomDevices.of(seed);
        Random random = new Random(seed);
        OrderRequest request = request(of, random, rebuild);
        OptionalLong least = new AllOrders(request).least();
        OrderAnswer answer = ActOrder.find(request, Watch.NONE);
        if (least.isEmpty()) {
            assertInstanceOf(OrderAnswer.Impossible.class, answer, () -> request.items() + "");
            impossible++;
            return;
        }
        OrderAnswer.Found found =
                assertInstanceOf(
                        OrderAnswer.Found.class, answer, () -> answer + " " + request.items());
        assertEquals(found.setupMs(), AllOrders.setupMs(request, found.order()));
        assertTrue(
                found.lowerBoundMs() <= least.getAsLong() && least.getAsLong() <= found.setupMs(),
                () -> least + " outside " + found + " " + request.items());
        if (rebuild || !asideCosts(request)) {
            assertEquals(least.getAsLong(), found.setupMs(), () -> found + " " + request.items());
            assertTrue(found.proved());
        } else {
            aside++;
            proved += found.proved() ? 1 : 0;
        }
        assertTrue(AllOrders.keepsPairs(request, found.order()));
        possible++;
        List<Integer> given = new ArrayList<>();
        request.items().forEach(item -> given.add(given.size()));
        better += AllOrders.setupMs(request, given) > found.setupMs() ? 1 : 0;
    }

    private static OrderRequest request(Case of, Random random, boolean rebuild) {
        Device device = of.device();
        List<Act> acts = walk(of, random);
        boolean shuffled = random.nextInt(3) == 0;
        if (shuffled) {
            Collections.shuffle(acts, random);
        }
        if (rebuild) {
            Collections.reverse(acts);
        }
        List<OrderItem> items = new ArrayList<>();
        acts.forEach(act -> items.add(OrderItem.of(device, act)));
        // the simulator does not know other items, so their postures would go unnoticed
        int more = rebuild || !costs(device.setup()) ? random.nextInt(4) : 2;
        if (more == 0) {
            items.add(
                    random.nextInt(items.size() + 1),
                    new OrderItem("wait", Optional.empty(), Optional.empty(), 5_000));
        } else if (more == 1) {
            OrderItem.Stance stance =
                    new OrderItem.Stance(
                            device.setup().tools().get(0), device.setup().postures().get(0));
            items.add(
                    random.nextInt(items.size() + 1),
                    new OrderItem("test", Optional.empty(), Optional.of(stance), 10_000));
        }
        OrderRequest request =
                new OrderRequest(
                        device.setup(),
                        new OrderItem.Stance(device.hand(), device.usualPosture()),
                        items,
                        List.of(),
                        Optional.of(new OrderRequest.Unit(device, of.start(), rebuild)),
                        Effort.ofExpansions(1_000_000));
        for (int pairs = random.nextInt(3); pairs > 0 && items.size() > 1; pairs--) {
            int earlier = random.nextInt(items.size());
            int later = random.nextInt(items.size());
            if (earlier != later) {
                request = request.before(earlier, later);
            }
        }
        return request;
    }

    private static boolean asideCosts(OrderRequest request) {
        return costs(request.setup());
    }

    private static boolean costs(SetupTable setup) {
        return setup.layAsideMs() > 0 || setup.turnOpenMs() > 0;
    }

    /** Acts that are allowed one after the other. */
    private static List<Act> walk(Case of, Random random) {
        Walker walker = new Walker(of);
        List<Act> acts = new ArrayList<>();
        of.device().prepares().keySet().stream()
                .filter(id -> !of.start().prepared().contains(id))
                .forEach(id -> walker.take(new Act.Prepared(id)));
        while (acts.size() < MOST_ACTS) {
            List<Act> allowed = walker.allowed();
            if (allowed.isEmpty()) {
                break;
            }
            Act act = allowed.get(random.nextInt(allowed.size()));
            assertTrue(walker.take(act).isPresent());
            acts.add(act);
        }
        return acts;
    }

    /** Tries all orders, one item after the other, with the simulator. */
    private static final class AllOrders {

        private final OrderRequest request;
        private final OrderRequest.Unit unit;
        private final List<OrderItem> items;
        private long least = Long.MAX_VALUE;

        AllOrders(OrderRequest request) {
            this.request = request;
            this.unit = request.unit().orElseThrow();
            this.items = request.items();
        }

        OptionalLong least() {
            tryAll(new ArrayList<>());
            return least == Long.MAX_VALUE ? OptionalLong.empty() : OptionalLong.of(least);
        }

        /** Goes on from the first items of a teardown; those of a rebuild are the last. */
        private void tryAll(List<Integer> teardown) {
            if (!allowed(teardown)) {
                return;
            }
            if (teardown.size() == items.size()) {
                List<Integer> order = new ArrayList<>(teardown);
                if (unit.rebuild()) {
                    Collections.reverse(order);
                }
                if (keepsPairs(request, order)) {
                    least = Math.min(least, setupMs(request, order));
                }
                return;
            }
            for (int at = 0; at < items.size(); at++) {
                if (!teardown.contains(at)) {
                    teardown.add(at);
                    tryAll(teardown);
                    teardown.remove(teardown.size() - 1);
                }
            }
        }

        private boolean allowed(List<Integer> teardown) {
            if (teardown.isEmpty()) {
                return true;
            }
            int last = teardown.get(teardown.size() - 1);
            if (items.get(last).act().isEmpty()) {
                return true;
            }
            for (int other = 0; other < items.size(); other++) {
                boolean earlier = unit.rebuild() ? other > last : other < last;
                if (earlier && moveTheSame(other, last) && !teardown.contains(other)) {
                    return false;
                }
            }
            return simulate(unit, items, teardown).allowed();
        }

        private static Verdict simulate(
                OrderRequest.Unit unit, List<OrderItem> items, List<Integer> teardown) {
            List<Act> acts = new ArrayList<>();
            unit.device().prepares().keySet().stream()
                    .filter(id -> !unit.state().prepared().contains(id))
                    .forEach(id -> acts.add(new Act.Prepared(id)));
            teardown.forEach(at -> items.get(at).act().ifPresent(acts::add));
            return Simulator.simulate(unit.device(), unit.state(), acts);
        }

        private boolean moveTheSame(int one, int other) {
            return items.get(one).act().orElse(null) instanceof Act.MoveParts a
                    && items.get(other).act().orElse(null) instanceof Act.MoveParts b
                    && !Collections.disjoint(a.parts(), b.parts());
        }

        /** Time of the items and of the joints that let go, which no order changes. */
        private static long workMs(OrderRequest request) {
            OrderRequest.Unit unit = request.unit().orElseThrow();
            Set<String> let = new HashSet<>();
            Set<String> own = new HashSet<>(unit.state().released());
            for (OrderItem item : request.items()) {
                if (item.act().orElse(null) instanceof Act.Release release) {
                    own.add(release.joint());
                }
                if (item.act().orElse(null) instanceof Act.MoveParts move) {
                    unit.device().joints().values().stream()
                            .filter(Joint::gives)
                            .filter(joint -> !move.parts().containsAll(joint.holds()))
                            .filter(joint -> !Collections.disjoint(joint.holds(), move.parts()))
                            .forEach(joint -> let.add(joint.id()));
                }
            }
            let.removeAll(own);
            return request.items().stream().mapToLong(OrderItem::ms).sum()
                    + let.stream()
                            .map(unit.device()::joint)
                            .mapToLong(j -> j.firstWay().ms() + j.firstWay().restoreMs())
                            .sum();
        }

        static boolean keepsPairs(OrderRequest request, List<Integer> order) {
            return request.before().stream()
                    .allMatch(p -> order.indexOf(p.earlier()) < order.indexOf(p.later()));
        }

        /** Set-ups; in a teardown with what laying aside adds, as the simulator charges it. */
        static long setupMs(OrderRequest request, List<Integer> order) {
            OrderRequest.Unit unit = request.unit().orElseThrow();
            if (!unit.rebuild() && costs(request.setup())) {
                long ms = 0;
                for (CostedAct act : simulate(unit, request.items(), order).acts()) {
                    ms += act.act() instanceof Act.Prepared ? 0 : act.costMs();
                }
                return ms - workMs(request);
            }
            OrderItem.Stance at = request.start();
            long sum = 0;
            for (int item : order) {
                OrderItem.Stance next = request.items().get(item).stance().orElse(at);
                sum +=
                        request.setup()
                                .setupMs(at.tool(), at.posture(), next.tool(), next.posture());
                at = next;
            }
            return sum;
        }
    }
}
