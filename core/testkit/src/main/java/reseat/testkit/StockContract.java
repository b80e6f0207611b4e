package reseat.testkit;

import static reseat.testkit.StockWords.CLIENTS;
import static reseat.testkit.StockWords.equal;
import static reseat.testkit.StockWords.fails;
import static reseat.testkit.StockWords.item;
import static reseat.testkit.StockWords.line;
import static reseat.testkit.StockWords.number;
import static reseat.testkit.StockWords.pick;
import static reseat.testkit.StockWords.plain;
import static reseat.testkit.StockWords.request;
import static reseat.testkit.StockWords.together;
import static reseat.testkit.StockWords.withLot;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import reseat.stock.Reservation;
import reseat.stock.Reservation.Request;
import reseat.stock.Reservation.State;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.stock.StockItem;

/**
 * The contract of stocks, as cases for dynamic tests of any test library:
 *
 * <pre>{@code
 * @TestFactory
 * Stream<DynamicTest> keepsTheContract() {
 *     return StockContract.cases(new MyShop()).stream()
 *             .map(c -> DynamicTest.dynamicTest(c.name(), c.body()::run));
 * }
 * }</pre>
 */
public final class StockContract {

    private final Shop shop;

    private StockContract(Shop shop) {
        this.shop = shop;
    }

    /** Opens the stock under test. */
    public interface Shop {

        /** Creates a stock with these lines, nothing reserved, and opens it. */
        Stock fresh(List<StockItem> lines) throws Exception;

        /** Opens the stock that was created last again, as another client would. */
        Stock again() throws Exception;
    }

    /**
     * One requirement of a stock.
     *
     * @param name the requirement
     * @param body the test; throws if it fails
     */
    public record Case(String name, Body body) {}

    /** A test; throws if it fails. */
    @FunctionalInterface
    public interface Body {
        /** Runs the test. */
        void run() throws Exception;
    }

    /** Returns all cases. They use the shop one after the other, in this order. */
    public static List<Case> cases(Shop shop) {
        StockContract it = new StockContract(Objects.requireNonNull(shop));
        return List.of(
                new Case("lists its lines in a fixed order", it::tellsItsLines),
                new Case("reserves all picks or none", it::allOrNothing),
                new Case("a repeated request changes nothing", it::repeats),
                new Case("an id stands for one request", it::conflicts),
                new Case("use removes stock, tools come back", it::uses),
                new Case("release gives back", it::releases),
                new Case("a used or released reservation is final", it::finished),
                new Case("lists open reservations, oldest first", it::tellsWhatIsOpen),
                new Case("unknown lines and ids are reported", it::unknown),
                new Case("another client sees the same", it::seenByOthers),
                new Case("quantities may be fractions", it::brokenQuantities),
                new Case("concurrent clients never get more than there is", it::neverOversold),
                new Case("one id from concurrent clients is one request", it::oneIdAtOnce));
    }

    /** Returns lines that a shop may have: a part, screws, two lots of tape, a bit. */
    public static List<StockItem> lines() {
        return List.of(
                line("A1", StockItem.Kind.PART, "Cell", List.of("X-02", "X-02B"), "5", "piece"),
                line("B1", StockItem.Kind.SCREW, "Screw M2x4", List.of("X-S-204"), "40", "piece"),
                withLot("C1", "2.5", "L-17", LocalDate.of(2026, 6, 30)),
                withLot("C2", "10", "L-18", LocalDate.of(2027, 1, 31)),
                line("D1", StockItem.Kind.TOOL, "Bit T6", List.of("t6"), "2", "piece"));
    }

    private void tellsItsLines() throws Exception {
        try (Stock stock = shop.fresh(lines())) {
            equal(lines(), plain(stock.items()));
        }
    }

    private void allOrNothing() throws Exception {
        try (Stock stock = shop.fresh(lines())) {
            stock.reserve(request("R1", pick("A1", "4"), pick("B1", "10")));
            fails(
                    StockException.Kind.SHORT,
                    () -> stock.reserve(request("R2", pick("B1", "1"), pick("A1", "2"))));

            equal(number("4"), item(stock, "A1").reserved());
            equal(number("10"), item(stock, "B1").reserved());
            equal(Optional.empty(), stock.reservation("R2"));
            stock.reserve(request("R2", pick("A1", "1")));
        }
    }

    private void repeats() throws Exception {
        try (Stock stock = shop.fresh(lines())) {
            Request wish = request("R1", pick("A1", "4"), pick("B1", "1"));
            Reservation first = stock.reserve(wish);
            equal(new Reservation(wish, State.RESERVED), first);
            equal(first, stock.reserve(wish));
            equal(first, stock.reserve(request("R1", pick("A1", "4.0"), pick("B1", "1.00"))));
            equal(number("4"), item(stock, "A1").reserved());
        }
    }

    private void conflicts() throws Exception {
        try (Stock stock = shop.fresh(lines())) {
            stock.reserve(request("R1", pick("A1", "1")));
            fails(
                    StockException.Kind.CONFLICT,
                    () -> stock.reserve(request("R1", pick("A1", "2"))));
            fails(
                    StockException.Kind.CONFLICT,
                    () ->
                            stock.reserve(
                                    new Request("R1", "another job", List.of(pick("A1", "1")))));
            equal(number("1"), item(stock, "A1").reserved());
        }
    }

    private void uses() throws Exception {
        try (Stock stock = shop.fresh(lines())) {
            stock.reserve(request("R1", pick("A1", "2"), pick("C1", "0.5"), pick("D1", "1")));
            equal(State.USED, stock.use("R1").state());
            equal(State.USED, stock.use("R1").state());

            equal(number("3"), item(stock, "A1").onHand());
            equal(number("0"), item(stock, "A1").reserved());
            equal(number("2"), item(stock, "C1").onHand());
            equal(number("2"), item(stock, "D1").onHand());
            equal(number("0"), item(stock, "D1").reserved());
        }
    }

    private void releases() throws Exception {
        try (Stock stock = shop.fresh(lines())) {
            stock.reserve(request("R1", pick("A1", "5"), pick("D1", "2")));
            equal(State.RELEASED, stock.release("R1").state());
            equal(State.RELEASED, stock.release("R1").state());

            equal(lines(), plain(stock.items()));
            stock.reserve(request("R2", pick("A1", "5")));
        }
    }

    private void finished() throws Exception {
        try (Stock stock = shop.fresh(lines())) {
            Request wish = request("R1", pick("A1", "1"));
            stock.reserve(wish);
            stock.use("R1");
            fails(StockException.Kind.CONFLICT, () -> stock.release("R1"));
            equal(State.USED, stock.reserve(wish).state());
            stock.reserve(request("R2", pick("A1", "1")));
            stock.release("R2");
            fails(StockException.Kind.CONFLICT, () -> stock.use("R2"));
            equal(number("4"), item(stock, "A1").onHand());
            equal(number("0"), item(stock, "A1").reserved());
        }
    }

    private void tellsWhatIsOpen() throws Exception {
        try (Stock stock = shop.fresh(lines())) {
            for (String id : List.of("R9", "R1", "R5", "R3")) {
                stock.reserve(request(id, pick("B1", "2"), pick("A1", "1")));
            }
            stock.use("R1");
            stock.release("R5");
            equal(List.of("R9", "R3"), stock.open().stream().map(Reservation::id).toList());
            equal(List.of(pick("B1", "2"), pick("A1", "1")), stock.open().get(0).request().picks());
        }
    }

    private void unknown() throws Exception {
        try (Stock stock = shop.fresh(lines())) {
            fails(
                    StockException.Kind.UNKNOWN,
                    () -> stock.reserve(request("R1", pick("A1", "1"), pick("no-line", "1"))));
            fails(StockException.Kind.UNKNOWN, () -> stock.use("R1"));
            fails(StockException.Kind.UNKNOWN, () -> stock.release("R1"));
            equal(Optional.empty(), stock.reservation("R1"));
            equal(lines(), plain(stock.items()));
        }
    }

    private void seenByOthers() throws Exception {
        try (Stock one = shop.fresh(lines());
                Stock other = shop.again()) {
            Reservation made = one.reserve(request("R1", pick("A1", "5")));
            equal(Optional.of(made), other.reservation("R1"));
            fails(StockException.Kind.SHORT, () -> other.reserve(request("R2", pick("A1", "1"))));
            other.release("R1");
            equal(number("0"), item(one, "A1").reserved());
        }
    }

    private void brokenQuantities() throws Exception {
        try (Stock stock = shop.fresh(lines())) {
            stock.reserve(request("R1", pick("C1", "2.4999")));
            fails(
                    StockException.Kind.SHORT,
                    () -> stock.reserve(request("R2", pick("C1", "0.0002"))));
            stock.reserve(request("R3", pick("C1", "0.0001")));
            equal(number("2.5"), item(stock, "C1").reserved());
        }
    }

    private void neverOversold() throws Exception {
        try (Stock stock = shop.fresh(lines())) {
            List<Boolean> won =
                    together(
                            client -> {
                                boolean any = false;
                                for (int n = 0; n < 3; n++) {
                                    any |= reserves(stock, "R-" + client + "-" + n);
                                }
                                return any;
                            });
            equal(CLIENTS, won.size());
            equal(5, stock.open().size());
            equal(number("5"), item(stock, "A1").reserved());
            equal(number("5"), item(stock, "B1").reserved());
        }
    }

    private static boolean reserves(Stock stock, String id) throws StockException {
        try {
            stock.reserve(request(id, pick("B1", "1"), pick("A1", "1")));
            return true;
        } catch (StockException e) {
            equal(StockException.Kind.SHORT, e.kind());
            return false;
        }
    }

    private void oneIdAtOnce() throws Exception {
        try (Stock stock = shop.fresh(lines())) {
            Request wish = request("R1", pick("A1", "3"));
            List<Reservation> answers = together(client -> stock.reserve(wish));
            answers.forEach(answer -> equal(new Reservation(wish, State.RESERVED), answer));
            equal(number("3"), item(stock, "A1").reserved());
            together(client -> stock.use("R1"));
            equal(number("2"), item(stock, "A1").onHand());
        }
    }
}
