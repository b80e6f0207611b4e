package reseat.console.report;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.net.URI;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
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
import reseat.spi.ToolkitVersion;
import reseat.text.JsonText;

/** Writes findings as SARIF 2.1.0. */
public final class SarifReport {

    private static final String ROOT = "WORK";

    private final Outcome outcome;
    private final Path root;
    private final List<String> rules;

    private SarifReport(Outcome outcome, Path root) {
        this.outcome = outcome;
        this.root = root.toAbsolutePath().normalize();
        this.rules = outcome.report().checks().stream().map(CheckInfo::id).toList();
    }

    /**
     * Returns all findings as SARIF; accepted ones are suppressed.
     *
     * @param root the folder that file names are relative to
     */
    public static String write(Outcome outcome, Path root) {
        return JsonText.of(new SarifReport(outcome, root).log());
    }

    private Map<String, Object> log() {
        Map<String, Object> run =
                JsonText.map(
                        "tool",
                        JsonText.map("driver", driver()),
                        "columnKind",
                        "unicodeCodePoints",
                        "originalUriBaseIds",
                        JsonText.map(ROOT, JsonText.map("uri", folder(root))),
                        "invocations",
                        List.of(invocation()),
                        "results",
                        results());
        return JsonText.map(
                "$schema",
                "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json",
                "version",
                "2.1.0",
                "runs",
                List.of(run));
    }

    private Map<String, Object> driver() {
        return JsonText.map(
                "name", "reseat",
                "version", ToolkitVersion.current(),
                "rules", outcome.report().checks().stream().map(SarifReport::rule).toList());
    }

    private static Map<String, Object> rule(CheckInfo info) {
        return JsonText.map(
                "id", info.id(),
                "shortDescription", text(info.title()),
                "fullDescription", text(info.finds()),
                "help", text(info.matters()),
                "defaultConfiguration", JsonText.map("level", info.severity()),
                "properties", JsonText.map("tags", info.tags()));
    }

    private static Map<String, Object> text(String text) {
        return JsonText.map("text", text);
    }

    private Map<String, Object> invocation() {
        List<Map<String, Object>> told = new ArrayList<>();
        for (Checked checked : outcome.report().checked()) {
            checked.problems().forEach(problem -> told.add(notification(problem)));
        }
        outcome.report().failures().forEach(failure -> told.add(notification(failure)));
        return JsonText.map(
                "executionSuccessful",
                outcome.code() < 2 && !outcome.report().cancelled(),
                "exitCode",
                outcome.code(),
                "toolExecutionNotifications",
                told);
    }

    private Map<String, Object> notification(Problem problem) {
        return JsonText.map(
                "level", problem.isError() ? "error" : "warning",
                "message", text(problem.message()),
                "locations", List.of(JsonText.map("physicalLocation", place(problem.at()))));
    }

    private static Map<String, Object> notification(CheckFailure failure) {
        return JsonText.map("level", "error", "message", text(failure.toString()));
    }

    private List<Map<String, Object>> results() {
        List<Map<String, Object>> results = new ArrayList<>();
        Map<String, Integer> seen = new HashMap<>();
        outcome.report()
                .found()
                .forEach(
                        found -> {
                            String identity =
                                    found.finding().check()
                                            + "\n"
                                            + found.device()
                                            + "\n"
                                            + found.finding().subject();
                            int which = seen.merge(identity, 1, Integer::sum);
                            results.add(result(found, hash(identity + "\n" + which)));
                        });
        return results;
    }

    private Map<String, Object> result(Found found, String fingerprint) {
        Finding finding = found.finding();
        Map<String, Object> location =
                JsonText.map(
                        "physicalLocation",
                        place(finding.at()),
                        "logicalLocations",
                        List.of(
                                JsonText.map(
                                        "fullyQualifiedName", found.device() + finding.subject())));
        Map<String, Object> result =
                JsonText.map(
                        "ruleId", finding.check(),
                        "ruleIndex", rules.indexOf(finding.check()),
                        "level", finding.severity(),
                        "message", text(finding.message() + " " + finding.remedy()),
                        "locations", List.of(location),
                        "partialFingerprints", JsonText.map("subject/v1", fingerprint),
                        "properties",
                                JsonText.map(
                                        "device", found.device(),
                                        "variants", found.variants(),
                                        "evidence", finding.evidence(),
                                        "remedy", finding.remedy()));
        List<KnownFinding> accepting = outcome.accepting(found);
        // if any result has suppressions, all should have them
        result.put("suppressions", accepting.stream().map(SarifReport::suppression).toList());
        return result;
    }

    private static Map<String, Object> suppression(KnownFinding entry) {
        return JsonText.map(
                "kind", "external",
                "status", "accepted",
                "justification", entry.reason() + " (until " + entry.until() + ")");
    }

    private Map<String, Object> place(Origin at) {
        Map<String, Object> place = JsonText.map("artifactLocation", file(at.file()));
        if (at.line() > 0) {
            place.put(
                    "region",
                    at.column() > 0
                            ? JsonText.map("startLine", at.line(), "startColumn", at.column())
                            : JsonText.map("startLine", at.line()));
        }
        return place;
    }

    private Map<String, Object> file(String name) {
        Path full;
        try {
            full = root.resolve(name).normalize();
        } catch (InvalidPathException e) {
            // facts of families and facts built in memory have no file
            return JsonText.map("description", text(name));
        }
        URI uri = full.toUri();
        return full.startsWith(root)
                ? JsonText.map(
                        "uri", uri.toString().substring(folder(root).length()), "uriBaseId", ROOT)
                : JsonText.map("uri", uri);
    }

    private static String folder(Path path) {
        String uri = path.toUri().toString();
        return uri.endsWith("/") ? uri : uri + "/";
    }

    private static String hash(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(UTF_8));
            return HexFormat.of().formatHex(digest, 0, 16);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("SHA-256 is missing", e);
        }
    }
}
