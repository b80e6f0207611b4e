package reseat.console.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import reseat.check.Finding;
import reseat.console.check.Found;

/**
 * Groups findings by their cause: those that say the same of several things, each by its name, are
 * one entry for people. Machines get them one by one.
 */
final class Causes {

    /** Stands for the id of what a finding is about; no text of a device contains it. */
    private static final String EACH = "\u0000";

    private Causes() {}

    /** Returns the findings in groups, in the order of the first of each. */
    static List<List<Found>> of(List<Found> findings) {
        Map<List<Object>, List<Found>> groups = new LinkedHashMap<>();
        for (Found found : findings) {
            groups.computeIfAbsent(cause(found), cause -> new ArrayList<>()).add(found);
        }
        return List.copyOf(groups.values());
    }

    private static List<Object> cause(Found found) {
        Finding finding = Objects.requireNonNull(found.finding());
        Pattern own =
                Pattern.compile(
                        "(?<![\\w.-])" + Pattern.quote(name(finding)) + "(?![\\w-]|\\.\\w)");
        return List.of(
                finding.check(),
                finding.severity(),
                finding.at().file(),
                finding.title(),
                without(own, finding.message()),
                finding.evidence().stream().map(fact -> without(own, fact)).toList(),
                without(own, finding.remedy()),
                found.variants());
    }

    private static String without(Pattern own, String text) {
        return own.matcher(text).replaceAll(EACH);
    }

    /** Returns the id of what a finding is about. */
    static String name(Finding finding) {
        String[] steps = finding.subject().split("/", -1);
        // "/joints/plug/ways/usual" is about the plug
        return steps.length > 2 ? steps[2] : finding.subject();
    }

    /** Returns the names of a group, with their lines where these differ. */
    static String names(List<Found> alike) {
        boolean lines =
                alike.stream().map(found -> found.finding().at().line()).distinct().count() > 1;
        List<String> names = new ArrayList<>();
        for (Found found : alike) {
            Finding finding = found.finding();
            names.add(name(finding) + (lines ? " (line " + finding.at().line() + ")" : ""));
        }
        return alike.size() + " alike: " + String.join(", ", names);
    }
}
