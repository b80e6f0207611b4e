package reseat.console.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import reseat.check.CheckInfo;
import reseat.check.Finding;
import reseat.console.check.Checked;
import reseat.console.check.Found;
import reseat.console.sheet.Terminal;
import reseat.files.KnownFinding;

/** Writes findings as text. */
public final class TextReport {

    private final Outcome outcome;
    private final Terminal terminal;
    private final StringBuilder out = new StringBuilder();

    private TextReport(Outcome outcome, Terminal terminal) {
        this.outcome = outcome;
        this.terminal = terminal;
    }

    /** Returns the open findings, the obstacles to checking, and the summary. */
    public static String write(Outcome outcome, Terminal terminal) {
        TextReport text = new TextReport(outcome, terminal);
        outcome.hindrances().forEach(text::line);
        outcome.report().checked().forEach(text::findings);
        text.known();
        text.leftOut();
        text.line(summary(outcome));
        return text.out.toString();
    }

    private void line(String text) {
        out.append(text).append(System.lineSeparator());
    }

    private void findings(Checked checked) {
        List<Found> open = outcome.open(checked);
        Causes.of(open).forEach(this::finding);
        if (!open.isEmpty() && outcome.report().checked().size() > 1) {
            line(Outcome.device(checked) + ": " + Outcome.counted(open));
        }
    }

    /** Prints findings of one cause: the first, with the names of all. */
    private void finding(List<Found> alike) {
        Found found = alike.get(0);
        Finding first = found.finding();
        line(
                first.at()
                        + ": "
                        + Outcome.word(first.severity())
                        + ": "
                        + first.title()
                        + " ["
                        + first.check()
                        + "]"
                        + (found.everywhere() ? "" : " in " + String.join(", ", found.variants())));
        if (alike.size() > 1) {
            line(terminal.fitted("    " + Causes.names(alike)));
        }
        line(terminal.fitted("    " + first.message()));
        first.evidence().forEach(fact -> line(terminal.fitted("    - " + fact)));
        line(terminal.fitted("    Do: " + first.remedy()));
    }

    private void known() {
        for (KnownFinding each : outcome.sifted().expired()) {
            line(each.at() + ": warning: this was accepted until " + each.until() + told(each));
        }
        for (KnownFinding each : outcome.sifted().idle()) {
            line(each.at() + ": warning: this known finding no longer occurs" + told(each));
        }
        int unseen = outcome.sifted().unseen().size();
        if (unseen > 0) {
            line(
                    Outcome.many(unseen, "known finding")
                            + " of checks or devices that this run did not cover");
        }
    }

    private static String told(KnownFinding each) {
        return ": " + each.check() + ", " + each.device() + " " + each.subject();
    }

    private void leftOut() {
        for (CheckInfo each : outcome.report().leftOut()) {
            line(
                    "left out: "
                            + each.id()
                            + ", which needs "
                            + ChecksPage.needs(each).replace("`", ""));
        }
    }

    /** Returns the last line: what was checked, and the result. */
    public static String summary(Outcome outcome) {
        List<Checked> checked =
                outcome.report().checked().stream().filter(c -> !c.device().isEmpty()).toList();
        Map<String, Integer> rest = new LinkedHashMap<>();
        rest.put("accepted", outcome.sifted().accepted().size());
        long unsound = outcome.report().checked().stream().filter(c -> !c.sound()).count();
        StringBuilder text =
                new StringBuilder(
                        checked.size() == 1
                                ? Outcome.device(checked.get(0))
                                : Outcome.many(checked.size(), "device")
                                        + ", "
                                        + checked.stream().mapToInt(c -> c.variants().size()).sum()
                                        + " with their variants");
        text.append(": ").append(Outcome.counted(outcome.sifted().open()));
        rest.forEach((what, n) -> text.append(n == 0 ? "" : ", " + n + " " + what));
        if (unsound > 0) {
            text.append(
                    String.format(Locale.ROOT, ", %s with errors", Outcome.many(unsound, "file")));
        }
        long failed = outcome.report().failures().map(f -> f.check()).distinct().count();
        if (failed > 0) {
            text.append(", ").append(Outcome.many(failed, "check")).append(" failed");
        }
        if (outcome.report().cancelled()) {
            text.append("; it was stopped before it finished");
        }
        return text.toString();
    }
}
