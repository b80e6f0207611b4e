package reseat.stock.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import reseat.stock.Reservation;
import reseat.stock.StockItem;

/** What holds for all stocks and needs. */
class AvailabilityProperties {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 1);

    @Provide
    Arbitrary<List<StockItem>> stocks() {
        Arbitrary<Optional<LocalDate>> expiries =
                Arbitraries.integers().between(-3, 6).map(d -> DAY.plusDays(d)).optional();
        Arbitrary<StockItem> item =
                Combinators.combine(
                                Arbitraries.of("a", "b", "c").list().uniqueElements().ofMinSize(1),
                                Arbitraries.integers().between(0, 8),
                                Arbitraries.integers().between(0, 8),
                                Arbitraries.of("mm", "cm", "piece"),
                                expiries)
                        .as(
                                (serves, some, more, unit, expires) ->
                                        item(serves, some, some + more, unit, expires));
        return item.list().ofMaxSize(6).map(AvailabilityProperties::numbered);
    }

    @Provide
    Arbitrary<List<StockNeed>> needs() {
        return Combinators.combine(
                        Arbitraries.of("a", "b", "c"),
                        Arbitraries.integers().between(1, 60),
                        Arbitraries.of("mm", "piece"))
                .as(AvailabilityProperties::need)
                .list()
                .ofMaxSize(4);
    }

    @Property
    void whatIsTakenAndWhatIsMissingAddUp(
            @ForAll("needs") List<StockNeed> needs, @ForAll("stocks") List<StockItem> items) {
        Availability found = Availability.of(needs, items, DAY, 2);

        assertEquals(needs, found.lines().stream().map(Availability.Line::need).toList());
        for (Availability.Line line : found.lines()) {
            BigDecimal sum = line.missing();
            for (Availability.Taken taken : line.taken()) {
                assertTrue(taken.quantity().signum() > 0);
                sum = sum.add(inUnit(taken.item().unit(), taken.quantity()));
            }
            assertEquals(0, sum.compareTo(line.need().quantity()), line.toString());
            assertTrue(line.missing().signum() >= 0);
        }
    }

    @Property
    void neverMoreThanIsThereAndNothingExpired(
            @ForAll("needs") List<StockNeed> needs, @ForAll("stocks") List<StockItem> items) {
        Availability found = Availability.of(needs, items, DAY, 2);
        Map<String, StockItem> byId = new HashMap<>();
        items.forEach(item -> byId.put(item.id(), item));

        for (Reservation.Pick pick : found.picks()) {
            StockItem item = byId.get(pick.item());
            assertTrue(pick.quantity().compareTo(item.available()) <= 0, pick.toString());
            assertTrue(item.isGoodOn(DAY));
        }
        for (Availability.Line line : found.lines()) {
            line.taken().forEach(taken -> assertTrue(line.need().servedBy(taken.item())));
            line.alternates().forEach(item -> assertTrue(line.need().servedBy(item)));
        }
    }

    @Property
    void asMuchIsHadAsCanBe(
            @ForAll("needs") List<StockNeed> needs, @ForAll("stocks") List<StockItem> items) {
        Availability found = Availability.of(needs, items, DAY, 2);

        BigDecimal missing = BigDecimal.ZERO;
        for (Availability.Line line : found.lines()) {
            missing = missing.add(line.missing());
        }
        assertEquals(0, missing.compareTo(worstCut(needs, items)), found.toString());
    }

    @Property
    void oneNeedTakesWhatExpiresFirst(
            @ForAll("needs") List<StockNeed> needs, @ForAll("stocks") List<StockItem> items) {
        if (needs.isEmpty()) {
            return;
        }
        Availability.Line line = Availability.of(needs.subList(0, 1), items, DAY, 2).lines().get(0);

        for (StockItem other : line.alternates()) {
            for (Availability.Taken taken : line.taken()) {
                assertTrue(!last(other).isBefore(last(taken.item())), line.toString());
            }
        }
        if (!line.complete()) {
            assertEquals(List.of(), line.alternates());
        }
    }

    /** The most that some of the needs ask for beyond all that could serve them. */
    private static BigDecimal worstCut(List<StockNeed> needs, List<StockItem> items) {
        BigDecimal worst = BigDecimal.ZERO;
        for (int set = 0; set < 1 << needs.size(); set++) {
            BigDecimal over = BigDecimal.ZERO;
            List<StockNeed> chosen = new ArrayList<>();
            for (int n = 0; n < needs.size(); n++) {
                if ((set >> n & 1) == 1) {
                    chosen.add(needs.get(n));
                    over = over.add(needs.get(n).quantity());
                }
            }
            for (StockItem item : items) {
                boolean serves =
                        chosen.stream()
                                .anyMatch(
                                        need ->
                                                need.servedBy(item)
                                                        && need.unit().equals("piece")
                                                                == item.unit().equals("piece"));
                if (serves && item.isGoodOn(DAY)) {
                    over = over.subtract(inUnit(item.unit(), item.available()));
                }
            }
            worst = worst.max(over);
        }
        return worst;
    }

    private static BigDecimal inUnit(String unit, BigDecimal quantity) {
        return unit.equals("cm") ? quantity.multiply(BigDecimal.TEN) : quantity;
    }

    private static LocalDate last(StockItem item) {
        return item.expires().orElse(LocalDate.MAX);
    }

    private static StockNeed need(String takes, int quantity, String unit) {
        return new StockNeed(
                StockItem.Kind.CONSUMABLE,
                takes,
                takes,
                List.of(takes),
                BigDecimal.valueOf(quantity),
                unit,
                StockNeed.Reason.CONSUMED);
    }

    private static StockItem item(
            List<String> serves,
            int reserved,
            int onHand,
            String unit,
            Optional<LocalDate> expires) {
        return new StockItem(
                "?",
                StockItem.Kind.CONSUMABLE,
                "?",
                serves,
                BigDecimal.valueOf(onHand),
                BigDecimal.valueOf(reserved),
                unit,
                Optional.empty(),
                expires,
                Optional.empty());
    }

    private static List<StockItem> numbered(List<StockItem> items) {
        List<StockItem> out = new ArrayList<>();
        for (StockItem item : items) {
            out.add(
                    new StockItem(
                            "L" + out.size(),
                            item.kind(),
                            item.name(),
                            item.serves(),
                            item.onHand(),
                            item.reserved(),
                            item.unit(),
                            item.lot(),
                            item.expires(),
                            item.place()));
        }
        return out;
    }
}
