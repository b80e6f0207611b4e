package reseat.console.report;

import java.util.List;
import java.util.Map;
import reseat.check.CheckInfo;
import reseat.check.Finding;
import reseat.console.check.CheckFailure;
import reseat.console.check.Checked;
import reseat.console.check.Found;
import reseat.files.KnownFinding;
import reseat.model.Origin;
import reseat.model.Problem;
import reseat.text.JsonText;

/** Writes findings as JSON; core/docs/checking.md describes the format. */
public final class JsonReport {

    private final Outcome outcome;

    private JsonReport(Outcome outcome) {
        this.outcome = outcome;
    }

    /** Returns all findings, accepted ones too, as JSON. */
    public static String write(Outcome outcome) {
        JsonReport json = new JsonReport(outcome);
        return JsonText.of(
                JsonText.map(
                        "format", "reseat-findings/2",
                        "today", outcome.today(),
                        "from", outcome.from(),
                        "checks", outcome.report().checks().stream().map(CheckInfo::id).toList(),
                        "leftOut",
                                outcome.report().leftOut().stream()
                                        .map(JsonReport::leftOut)
                                        .toList(),
                        "devices", outcome.report().checked().stream().map(json::device).toList(),
                        "failures",
                                outcome.report().unusable().stream()
                                        .map(JsonReport::failure)
                                        .toList(),
                        "expired", entries(outcome.sifted().expired()),
                        "idle", entries(outcome.sifted().idle()),
                        "unseen", entries(outcome.sifted().unseen())));
    }

    private static Map<String, Object> leftOut(CheckInfo info) {
        return JsonText.map("check", info.id(), "needs", info.needs());
    }

    private Map<String, Object> device(Checked checked) {
        return JsonText.map(
                "file", checked.source(),
                "device", checked.device(),
                "variants", checked.variants(),
                "problems", checked.problems().stream().map(JsonReport::problem).toList(),
                "failures", checked.failures().stream().map(JsonReport::failure).toList(),
                "findings", checked.found().stream().map(this::finding).toList());
    }

    private static Map<String, Object> problem(Problem problem) {
        return JsonText.map(
                "severity", problem.severity(),
                "at", place(problem.at()),
                "message", problem.message());
    }

    private static Map<String, Object> failure(CheckFailure failure) {
        return JsonText.map(
                "check", failure.check(), "device", failure.device(), "message", failure.what());
    }

    private Map<String, Object> finding(Found found) {
        Finding finding = found.finding();
        return JsonText.map(
                "check", finding.check(),
                "severity", finding.severity(),
                "at", place(finding.at()),
                "subject", finding.subject(),
                "variants", found.variants(),
                "title", finding.title(),
                "message", finding.message(),
                "evidence", finding.evidence(),
                "remedy", finding.remedy(),
                "accepted", outcome.accepting(found).stream().findFirst().map(JsonReport::entry));
    }

    private static List<Map<String, Object>> entries(List<KnownFinding> entries) {
        return entries.stream().map(JsonReport::entry).toList();
    }

    private static Map<String, Object> entry(KnownFinding entry) {
        return JsonText.map(
                "check", entry.check(),
                "device", entry.device(),
                "subject", entry.subject(),
                "reason", entry.reason(),
                "until", entry.until(),
                "at", place(entry.at()));
    }

    private static Map<String, Object> place(Origin at) {
        return JsonText.map("file", at.file(), "line", at.line(), "column", at.column());
    }
}
