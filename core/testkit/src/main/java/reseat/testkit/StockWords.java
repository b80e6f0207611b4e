package reseat.testkit;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import reseat.stock.Reservation.Pick;
import reseat.stock.Reservation.Request;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.stock.StockItem;

/** Helpers for the cases of {@link StockContract}. */
final class StockWords {

    static final int CLIENTS = 8;

    private StockWords() {}

    interface Client<T> {
        T run(int client) throws Exception;
    }

    static <T> List<T> together(Client<T> client) throws Exception {
        ExecutorService pool = Executors.newFixedThreadPool(CLIENTS);
        try {
            List<Callable<T>> calls = new ArrayList<>();
            for (int i = 0; i < CLIENTS; i++) {
                int number = i;
                calls.add(() -> client.run(number));
            }
            List<T> answers = new ArrayList<>();
            for (Future<T> each : pool.invokeAll(calls)) {
                answers.add(each.get());
            }
            return answers;
        } catch (ExecutionException e) {
            throw new AssertionError("a client failed", e.getCause());
        } finally {
            pool.shutdownNow();
        }
    }

    static void fails(StockException.Kind kind, StockContract.Body body) throws Exception {
        try {
            body.run();
        } catch (StockException e) {
            equal(kind, e.kind());
            return;
        }
        throw new AssertionError("expected " + kind + ", but nothing was refused");
    }

    static void equal(Object expected, Object actual) {
        if (!expected.equals(actual)) {
            throw new AssertionError("expected: " + expected + "\n     found: " + actual);
        }
    }

    static StockItem item(Stock stock, String id) throws StockException {
        return plain(stock.items()).stream()
                .filter(item -> item.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("there is no line " + id));
    }

    /** Strips trailing zeros, so that lines compare by quantity. */
    static List<StockItem> plain(List<StockItem> items) {
        return items.stream()
                .map(
                        item ->
                                new StockItem(
                                        item.id(),
                                        item.kind(),
                                        item.name(),
                                        item.serves(),
                                        item.onHand().stripTrailingZeros(),
                                        item.reserved().stripTrailingZeros(),
                                        item.unit(),
                                        item.lot(),
                                        item.expires(),
                                        item.place()))
                .toList();
    }

    static BigDecimal number(String text) {
        return new BigDecimal(text).stripTrailingZeros();
    }

    static Pick pick(String item, String quantity) {
        return new Pick(item, new BigDecimal(quantity));
    }

    static Request request(String id, Pick... picks) {
        return new Request(id, "job 7", List.of(picks));
    }

    static StockItem line(
            String id,
            StockItem.Kind kind,
            String name,
            List<String> serves,
            String onHand,
            String unit) {
        return new StockItem(
                id,
                kind,
                name,
                serves,
                number(onHand),
                number("0"),
                unit,
                Optional.empty(),
                Optional.empty(),
                Optional.of("shelf 2"));
    }

    static StockItem withLot(String id, String onHand, String lot, LocalDate expires) {
        return new StockItem(
                id,
                StockItem.Kind.CONSUMABLE,
                "Tape 10 mm",
                List.of("tape-10"),
                number(onHand),
                number("0"),
                "m",
                Optional.of(lot),
                Optional.of(expires),
                Optional.empty());
    }
}
