package reseat.stock.desk;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import reseat.stock.StockItem;

/** Compares needs with a stock once. */
final class Comparison {

    /** First expiring first; what never expires last. */
    private static final Comparator<StockItem> ORDER =
            Comparator.<StockItem, LocalDate>comparing(item -> item.expires().orElse(LocalDate.MAX))
                    .thenComparing(StockItem::id);

    private final List<StockNeed> needs;
    private final List<StockItem> items;
    private final LocalDate day;
    private final LocalDate lastSoon;
    private final boolean toolsJudged;

    Comparison(List<StockNeed> needs, List<StockItem> items, LocalDate day, int warnDays) {
        this.items = items.stream().sorted(ORDER).toList();
        this.day = day;
        this.lastSoon = day.plusDays(warnDays);
        this.toolsJudged = items.stream().anyMatch(item -> item.kind() == StockItem.Kind.TOOL);
        this.needs =
                needs.stream()
                        .filter(need -> toolsJudged || need.kind() != StockItem.Kind.TOOL)
                        .toList();
    }

    Availability compare() {
        List<List<Integer>> choices = needs.stream().map(this::choices).toList();
        Allocation shares =
                new Allocation(
                        choices,
                        items.stream()
                                .map(item -> Measure.of(item.unit()).toBasic(item.available()))
                                .toList());
        List<BigDecimal> missing = new ArrayList<>();
        for (int n = 0; n < needs.size(); n++) {
            StockNeed need = needs.get(n);
            missing.add(
                    need.kind() == StockItem.Kind.TOOL
                            ? BigDecimal.ZERO
                            : shares.take(n, Measure.of(need.unit()).toBasic(need.quantity())));
        }
        Set<Integer> tools = new HashSet<>();
        List<Availability.Line> lines = new ArrayList<>();
        for (int n = 0; n < needs.size(); n++) {
            lines.add(
                    needs.get(n).kind() == StockItem.Kind.TOOL
                            ? tool(needs.get(n), choices.get(n), tools)
                            : line(n, choices.get(n), shares, missing.get(n)));
        }
        return new Availability(day, lines, toolsJudged);
    }

    private List<Integer> choices(StockNeed need) {
        return IntStream.range(0, items.size())
                .filter(i -> serves(need, items.get(i)) && items.get(i).isGoodOn(day))
                .boxed()
                .toList();
    }

    private static boolean serves(StockNeed need, StockItem item) {
        return need.servedBy(item) && Measure.of(need.unit()).sameAs(Measure.of(item.unit()));
    }

    private Availability.Line line(
            int n, List<Integer> choices, Allocation shares, BigDecimal missing) {
        List<Availability.Taken> taken = new ArrayList<>();
        List<StockItem> alternates = new ArrayList<>();
        for (int i : choices) {
            StockItem item = items.get(i);
            BigDecimal quantity = shares.taken(n, i);
            if (quantity.signum() > 0) {
                taken.add(taken(item, Measure.of(item.unit()).fromBasic(quantity)));
            } else if (shares.left(i).signum() > 0) {
                alternates.add(item);
            }
        }
        return told(needs.get(n), taken, missing, choices, alternates);
    }

    /** Prefers a tool that is already taken for another need. */
    private Availability.Line tool(
            StockNeed need, List<Integer> choices, Set<Integer> takenAlready) {
        List<Integer> there =
                choices.stream()
                        .filter(i -> items.get(i).available().compareTo(need.quantity()) >= 0)
                        .toList();
        Optional<Integer> chosen =
                there.stream()
                        .filter(takenAlready::contains)
                        .findFirst()
                        .or(() -> there.stream().findFirst());
        chosen.ifPresent(takenAlready::add);
        return told(
                need,
                chosen.map(i -> taken(items.get(i), need.quantity())).stream().toList(),
                chosen.isPresent() ? BigDecimal.ZERO : need.quantity(),
                choices,
                there.stream().filter(i -> !chosen.get().equals(i)).map(items::get).toList());
    }

    private Availability.Taken taken(StockItem item, BigDecimal quantity) {
        boolean soon = item.expires().filter(last -> !last.isAfter(lastSoon)).isPresent();
        return new Availability.Taken(item, quantity, soon);
    }

    private Availability.Line told(
            StockNeed need,
            List<Availability.Taken> taken,
            BigDecimal missing,
            List<Integer> choices,
            List<StockItem> alternates) {
        Measure measure = Measure.of(need.unit());
        BigDecimal held =
                choices.stream()
                        .map(items::get)
                        .map(item -> Measure.of(item.unit()).toBasic(item.reserved()))
                        .reduce(BigDecimal.ZERO, BigDecimal::add);
        return new Availability.Line(
                need,
                taken,
                need.kind() == StockItem.Kind.TOOL ? missing : measure.fromBasic(missing),
                measure.fromBasic(held),
                items.stream().filter(item -> serves(need, item) && !item.isGoodOn(day)).toList(),
                items.stream().filter(item -> need.servedBy(item) && !serves(need, item)).toList(),
                alternates);
    }
}
