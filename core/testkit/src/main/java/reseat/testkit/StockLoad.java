package reseat.testkit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import reseat.stock.Reservation;
import reseat.stock.Reservation.Pick;
import reseat.stock.Reservation.State;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.stock.StockItem;

/**
 * A load test: many clients reserve from one stock concurrently, more than there is; afterwards the
 * books are checked. The requests of each client depend only on the seed.
 */
public final class StockLoad {

    private static final int LINES = 20;
    private static final int REPEATS = 200;

    private final Opener opener;
    private final long seed;
    private final int each;
    private final IntConsumer progress;
    private final AtomicInteger done = new AtomicInteger();
    private final AtomicInteger refused = new AtomicInteger();
    private final AtomicInteger repeated = new AtomicInteger();
    private final Map<String, Reservation> told = new ConcurrentHashMap<>();

    private StockLoad(Opener opener, int each, long seed, IntConsumer progress) {
        this.opener = opener;
        this.each = each;
        this.seed = seed;
        this.progress = progress;
    }

    /** Opens the stock for one client. */
    @FunctionalInterface
    public interface Opener {
        /** Opens it. */
        Stock open() throws StockException;
    }

    /**
     * The result of a load test.
     *
     * @param told the last state that clients saw of each reservation, by id
     * @param refused how many requests were refused because there was too little
     * @param repeated how many calls had to be repeated because the stock could not be reached
     * @param nanos how long it took
     */
    public record Report(Map<String, Reservation> told, int refused, int repeated, long nanos) {

        public Report {
            told = Map.copyOf(told);
        }

        /** Returns how many requests there were. */
        public int wishes() {
            return told.size() + refused;
        }
    }

    /** Returns the lines that the clients reserve from, with this quantity of each. */
    public static List<StockItem> lines(int onHand) {
        List<StockItem> lines = new ArrayList<>();
        for (int n = 0; n < LINES; n++) {
            String id = name(n);
            lines.add(
                    new StockItem(
                            id,
                            StockItem.Kind.CONSUMABLE,
                            "Line " + n,
                            List.of(id),
                            BigDecimal.valueOf(onHand),
                            BigDecimal.ZERO,
                            "piece",
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty()));
        }
        return lines;
    }

    /**
     * Lets clients reserve, use and release concurrently; each opens the stock for itself.
     *
     * @param opener opens the stock, which contains {@link #lines}
     * @param clients how many
     * @param each how many requests each of them makes
     * @param seed determines the requests
     * @param progress gets the number of finished requests, from many threads
     */
    public static Report run(Opener opener, int clients, int each, long seed, IntConsumer progress)
            throws InterruptedException {
        StockLoad load = new StockLoad(opener, each, seed, progress);
        ExecutorService pool = Executors.newFixedThreadPool(clients);
        long start = System.nanoTime();
        try {
            List<Future<?>> running = new ArrayList<>();
            for (int client = 0; client < clients; client++) {
                int number = client;
                running.add(
                        pool.submit(
                                () -> {
                                    load.client(number);
                                    return number;
                                }));
            }
            for (Future<?> one : running) {
                one.get();
            }
        } catch (ExecutionException e) {
            throw new AssertionError("a client failed", e.getCause());
        } finally {
            pool.shutdownNow();
        }
        return new Report(
                load.told, load.refused.get(), load.repeated.get(), System.nanoTime() - start);
    }

    private void client(int number) throws StockException {
        Random random = new Random(seed * 1_000_003 + number);
        try (Stock stock = repeat(opener::open)) {
            for (int n = 0; n < each; n++) {
                Reservation.Request wish =
                        new Reservation.Request(number + "-" + n, "job " + number, picks(random));
                int then = random.nextInt(4);
                try {
                    Reservation made = repeat(() -> stock.reserve(wish));
                    told.put(made.id(), made);
                    if (then == 0) {
                        told.put(made.id(), repeat(() -> stock.use(made.id())));
                    } else if (then == 1) {
                        told.put(made.id(), repeat(() -> stock.release(made.id())));
                    }
                } catch (StockException e) {
                    if (e.kind() != StockException.Kind.SHORT) {
                        throw e;
                    }
                    refused.incrementAndGet();
                }
                progress.accept(done.incrementAndGet());
            }
        }
    }

    private interface Call<T> {
        T call() throws StockException;
    }

    private <T> T repeat(Call<T> call) throws StockException {
        for (int tries = 1; ; tries++) {
            try {
                return call.call();
            } catch (StockException e) {
                if (e.kind() != StockException.Kind.UNREACHABLE || tries == REPEATS) {
                    throw e;
                }
                repeated.incrementAndGet();
            }
        }
    }

    private static List<Pick> picks(Random random) {
        Map<String, Pick> picks = new TreeMap<>((a, b) -> b.compareTo(a));
        int count = 1 + random.nextInt(3);
        for (int n = 0; n < count; n++) {
            String line = name(random.nextInt(LINES));
            picks.put(line, new Pick(line, BigDecimal.valueOf(1 + random.nextInt(3))));
        }
        return List.copyOf(picks.values());
    }

    private static String name(int line) {
        return "line-" + (char) ('a' + line);
    }

    /**
     * Checks the books after a load.
     *
     * @param onHand how much of each line there was
     * @param report what came of the load
     * @return what is wrong, as sentences; empty if the books balance
     */
    public static List<String> wrong(Stock stock, int onHand, Report report) throws StockException {
        List<String> wrong = new ArrayList<>();
        Collection<Reservation> told = report.told().values();
        for (StockItem line : stock.items()) {
            BigDecimal used = sum(told, line.id(), State.USED);
            BigDecimal reserved = sum(told, line.id(), State.RESERVED);
            if (line.onHand().add(used).compareTo(BigDecimal.valueOf(onHand)) != 0
                    || line.reserved().compareTo(reserved) != 0) {
                wrong.add(
                        line
                                + ": clients were informed that "
                                + used
                                + " were used and "
                                + reserved
                                + " are reserved");
            }
            if (line.reserved().compareTo(line.onHand()) > 0) {
                wrong.add(line + " is oversold");
            }
        }
        Map<String, Reservation> open = new TreeMap<>();
        stock.open().forEach(each -> open.put(each.id(), each));
        for (Reservation each : told) {
            Reservation there = open.remove(each.id());
            if (each.state() == State.RESERVED
                    ? !each.equals(there)
                    : !Optional.of(each).equals(stock.reservation(each.id()))) {
                wrong.add("lost or changed: " + each);
            }
        }
        open.values().forEach(each -> wrong.add("no client knows of " + each));
        return wrong;
    }

    private static BigDecimal sum(Collection<Reservation> told, String line, State state) {
        return told.stream()
                .filter(each -> each.state() == state)
                .flatMap(each -> each.request().picks().stream())
                .filter(pick -> pick.item().equals(line))
                .map(Pick::quantity)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
