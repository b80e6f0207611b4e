package reseat.stock.desk;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import reseat.model.Device;
import reseat.sheet.Names;
import reseat.spi.CommandCall;
import reseat.stock.StockItem;
import reseat.text.TimeText;

/** Answers to "can it be done today", as text. */
final class TodayText {

    private final CommandCall call;

    TodayText(CommandCall call) {
        this.call = call;
    }

    void one(CanDo answer) {
        Device device = answer.request().device();
        String what = title(device) + ": " + new Names(device).goal(answer.request().goal()) + ": ";
        if (answer.availability().isEmpty()) {
            call.out().println(what + "no.");
            answer.reasons().forEach(reason -> call.out().println("  " + reason + "."));
            return;
        }
        Availability found = answer.availability().get();
        call.out()
                .println(
                        what
                                + (found.complete()
                                        ? "yes, everything is in stock."
                                        : "no, "
                                                + (found.lines().size() - found.missing().size())
                                                + " of "
                                                + found.lines().size()
                                                + " items are in stock."));
        if (!answer.avoided().isEmpty()) {
            call.line(
                    "  not with the best plan, but without "
                            + avoided(answer)
                            + ", in "
                            + TimeText.of(answer.plan().orElseThrow().totalMs()));
        }
        List<List<String>> rows = new ArrayList<>();
        for (Availability.Line line : found.lines()) {
            for (Availability.Taken taken : line.taken()) {
                rows.add(
                        List.of(
                                "  take",
                                plain(taken.quantity()) + " " + taken.item().unit(),
                                taken.item().id(),
                                taken.item().name(),
                                taken.item().place().orElse(""),
                                expiry(taken)));
            }
        }
        if (!rows.isEmpty()) {
            Table.of(rows, 1).forEach(call::line);
        }
        for (Availability.Line line : found.missing()) {
            call.line("  missing  " + missing(line));
        }
        for (Availability.Line line : found.lines()) {
            if (line.complete() && !line.alternates().isEmpty()) {
                call.line(
                        "  instead of "
                                + line.taken().stream()
                                        .map(taken -> taken.item().id())
                                        .collect(Collectors.joining(", "))
                                + ": "
                                + listed(line.alternates()));
            }
        }
        if (!found.toolsJudged()) {
            call.out().println("  Tools were not checked: this stock lists none.");
        }
    }

    private static String expiry(Availability.Taken taken) {
        return taken.item()
                .expires()
                .map(day -> (taken.soon() ? "expires soon: " : "good until ") + day)
                .orElse("");
    }

    private static String missing(Availability.Line line) {
        StockNeed need = line.need();
        List<String> why = new ArrayList<>();
        share(line).ifPresent(share -> why.add(share + " are in stock"));
        if (line.held().signum() > 0) {
            why.add(plain(line.held()) + " " + need.unit() + " are reserved for other jobs");
        }
        for (StockItem item : line.expired()) {
            why.add(
                    item.id()
                            + " expired on "
                            + item.expires().map(LocalDate::toString).orElse(""));
        }
        if (!line.otherUnit().isEmpty()) {
            why.add(
                    listed(line.otherUnit())
                            + " counted in "
                            + line.otherUnit().get(0).unit()
                            + ", not in "
                            + need.unit());
        }
        return plain(line.missing())
                + " "
                + need.unit()
                + " of "
                + need.name()
                + " ("
                + need.takes().get(0)
                + ")"
                + (why.isEmpty() ? ": there is none" : ": " + String.join("; ", why));
    }

    /** How much of a need is there: "6 of 8 piece"; empty if nothing is. */
    private static Optional<String> share(Availability.Line line) {
        BigDecimal there = line.need().quantity().subtract(line.missing());
        return there.signum() > 0
                ? Optional.of(
                        plain(there)
                                + " of "
                                + plain(line.need().quantity())
                                + " "
                                + line.need().unit())
                : Optional.empty();
    }

    void catalogue(List<CanDo> answers) {
        List<List<String>> rows = new ArrayList<>();
        String last = "";
        for (CanDo answer : answers) {
            Device device = answer.request().device();
            String title = title(device);
            rows.add(
                    List.of(
                            title.equals(last) ? "" : title,
                            answer.targets().stream()
                                    .map(part -> device.part(part).name())
                                    .collect(Collectors.joining(", ")),
                            answer.yes() ? "yes" : "no",
                            remark(answer)));
            last = title;
        }
        if (!rows.isEmpty()) {
            Table.of(rows).forEach(call::line);
        }
        long possible = answers.stream().filter(CanDo::yes).count();
        call.out().println(possible + " of " + answers.size() + " repairs can be done.");
    }

    private static String remark(CanDo answer) {
        if (answer.availability().isEmpty()) {
            return String.join("; ", answer.reasons());
        }
        Availability found = answer.availability().get();
        if (!found.complete()) {
            return found.missing().stream()
                    .map(
                            line ->
                                    line.need().name()
                                            + share(line).map(s -> " (" + s + ")").orElse("")
                                            + (line.expired().isEmpty() ? "" : " (expired)")
                                            + (line.held().signum() > 0 ? " (reserved)" : ""))
                    .collect(Collectors.joining(", ", "missing: ", ""));
        }
        List<String> remarks = new ArrayList<>();
        if (!answer.avoided().isEmpty()) {
            remarks.add("without " + avoided(answer));
        }
        if (!found.soon().isEmpty()) {
            remarks.add(
                    found.soon().stream()
                            .map(taken -> taken.item().name())
                            .distinct()
                            .collect(Collectors.joining(", ", "expires soon: ", "")));
        }
        return String.join("; ", remarks);
    }

    private static String avoided(CanDo answer) {
        return answer.avoided().stream().map(StockNeed::name).collect(Collectors.joining(", "));
    }

    private static String title(Device device) {
        return device.name() + device.variant().map(variant -> " (" + variant + ")").orElse("");
    }

    private static String listed(List<StockItem> items) {
        return items.stream().map(StockItem::id).collect(Collectors.joining(", "));
    }

    private static String plain(BigDecimal number) {
        return number.toPlainString();
    }
}
