package reseat.console.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import reseat.check.CheckInfo;
import reseat.check.Finding;
import reseat.files.KnownFinding;

/**
 * The findings of a run, compared with those that the shop has accepted.
 *
 * @param open findings that are not accepted, or no longer, source by source
 * @param accepted findings, each with its entry
 * @param expired entries that are no longer in force; they hide nothing
 * @param idle entries in force that match no finding although their check ran on their device
 * @param unseen entries whose device or check was not part of the run, so that nothing is known
 *     about them
 */
public record Sifted(
        List<Found> open,
        Map<Found, KnownFinding> accepted,
        List<KnownFinding> expired,
        List<KnownFinding> idle,
        List<KnownFinding> unseen) {

    /**
     * Compares the findings of a run with the accepted ones.
     *
     * @param report the run
     * @param known the accepted findings
     * @param today the day on which expiry is judged
     */
    public static Sifted of(CheckReport report, List<KnownFinding> known, LocalDate today) {
        Map<Key, KnownFinding> inForce = new LinkedHashMap<>();
        List<KnownFinding> expired = new ArrayList<>();
        for (KnownFinding each : known) {
            if (each.until().isBefore(today)) {
                expired.add(each);
            } else {
                inForce.putIfAbsent(Key.of(each), each);
            }
        }
        List<Found> open = new ArrayList<>();
        Map<Found, KnownFinding> accepted = new LinkedHashMap<>();
        Set<Key> used = new LinkedHashSet<>();
        report.found()
                .forEach(
                        found -> {
                            Key key = Key.of(found);
                            KnownFinding entry = inForce.get(key);
                            if (entry == null) {
                                open.add(found);
                            } else {
                                accepted.put(found, entry);
                                used.add(key);
                            }
                        });
        expired.removeIf(each -> inForce.containsKey(Key.of(each)));
        List<KnownFinding> idle = new ArrayList<>();
        List<KnownFinding> unseen = new ArrayList<>();
        Set<String> looked = looked(report);
        inForce.forEach(
                (key, entry) -> {
                    if (!used.contains(key)) {
                        (looked.contains(key.check + " " + key.device) ? idle : unseen).add(entry);
                    }
                });
        return new Sifted(open, accepted, expired, idle, unseen);
    }

    /**
     * Returns the pairs of check and device for which the run establishes that nothing was found.
     */
    private static Set<String> looked(CheckReport report) {
        Set<String> looked = new LinkedHashSet<>();
        for (Checked checked : report.checked()) {
            Set<String> failed =
                    checked.failures().stream()
                            .map(CheckFailure::check)
                            .collect(Collectors.toSet());
            if (checked.sound()) {
                report.checks().stream()
                        .map(CheckInfo::id)
                        .filter(check -> !failed.contains(check))
                        .forEach(check -> looked.add(check + " " + checked.device()));
            }
        }
        return looked;
    }

    private record Key(String check, String device, String subject) {

        static Key of(KnownFinding entry) {
            return new Key(entry.check(), entry.device(), entry.subject());
        }

        static Key of(Found found) {
            return new Key(found.finding().check(), found.device(), found.finding().subject());
        }
    }

    public Sifted {
        open = List.copyOf(open);
        accepted = Collections.unmodifiableMap(new LinkedHashMap<>(accepted));
        expired = List.copyOf(expired);
        idle = List.copyOf(idle);
        unseen = List.copyOf(unseen);
    }

    /** Returns new entries for all open findings, one for each check, device and subject. */
    public List<KnownFinding> accept(String reason, LocalDate until) {
        Map<Key, KnownFinding> entries = new LinkedHashMap<>();
        for (Found found : open) {
            Finding finding = Objects.requireNonNull(found.finding());
            entries.putIfAbsent(
                    Key.of(found),
                    new KnownFinding(
                            finding.check(),
                            found.device(),
                            finding.subject(),
                            reason,
                            until,
                            finding.at()));
        }
        return List.copyOf(entries.values());
    }
}
