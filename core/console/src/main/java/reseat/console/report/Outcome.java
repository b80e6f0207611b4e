package reseat.console.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import reseat.console.check.CheckFailure;
import reseat.console.check.CheckReport;
import reseat.console.check.Checked;
import reseat.console.check.Found;
import reseat.console.check.Sifted;
import reseat.files.KnownFinding;
import reseat.model.Severity;

/**
 * A run of checks and its evaluation.
 *
 * @param report the run
 * @param sifted its findings, compared with the known ones
 * @param from lowest severity that counts
 * @param today the date it was judged by
 */
public record Outcome(CheckReport report, Sifted sifted, Severity from, LocalDate today) {

    /** Returns the exit code: failures take precedence over findings. */
    public int code() {
        if (report.failures().findAny().isPresent()) {
            return 3;
        }
        if (!report.sound()) {
            return 2;
        }
        return sifted.open().stream().anyMatch(this::counts) ? 1 : 0;
    }

    /** Returns whether a finding is at or above the threshold and not accepted. */
    public boolean counts(Found found) {
        return found.finding().severity().compareTo(from) <= 0
                && !sifted.accepted().containsKey(found);
    }

    /** Returns the entry that accepts a finding, or an empty list. */
    List<KnownFinding> accepting(Found found) {
        KnownFinding entry = sifted.accepted().get(found);
        return entry == null ? List.of() : List.of(entry);
    }

    /** Returns the findings of one source that nobody accepted. */
    List<Found> open(Checked checked) {
        return checked.found().stream()
                .filter(found -> !sifted.accepted().containsKey(found))
                .toList();
    }

    /**
     * Returns the obstacles to checking, one per line: files with errors, checks that failed. A
     * check that failed in the same way on many devices is one line.
     */
    public List<String> hindrances() {
        List<String> lines = new ArrayList<>();
        Map<List<String>, List<CheckFailure>> failures = new LinkedHashMap<>();
        report.checked()
                .forEach(checked -> checked.problems().forEach(p -> lines.add(p.toString())));
        report.failures()
                .forEach(
                        failure ->
                                failures.computeIfAbsent(
                                                List.of(failure.check(), failure.what()),
                                                key -> new ArrayList<>())
                                        .add(failure));
        failures.values()
                .forEach(
                        alike ->
                                lines.add(
                                        "reseat: "
                                                + alike.get(0)
                                                + (alike.size() == 1
                                                        ? ""
                                                        : " (It failed this way "
                                                                + (alike.size() - 1)
                                                                + " more times.)")));
        return lines;
    }

    /** Returns "2 errors, 1 note", or "nothing found". */
    static String counted(List<Found> found) {
        Map<Severity, Integer> counts = new EnumMap<>(Severity.class);
        found.forEach(each -> counts.merge(each.finding().severity(), 1, Integer::sum));
        List<String> told = new ArrayList<>();
        counts.forEach((severity, n) -> told.add(many(n, word(severity))));
        return told.isEmpty() ? "nothing found" : String.join(", ", told);
    }

    static String many(long n, String what) {
        return n + " " + what + (n == 1 ? "" : "s");
    }

    static String word(Severity severity) {
        return severity.name().toLowerCase(Locale.ROOT);
    }

    /** Returns the device with the variants that were checked, where there is more than one. */
    static String device(Checked checked) {
        boolean baseAlone = checked.variants().equals(List.of(Found.BASE));
        String id = Objects.requireNonNull(checked.device());
        return id + (baseAlone ? "" : " (" + String.join(", ", checked.variants()) + ")");
    }
}
