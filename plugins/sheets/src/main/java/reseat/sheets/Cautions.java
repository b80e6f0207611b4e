package reseat.sheets;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import reseat.model.Device;
import reseat.model.Hazard;
import reseat.plan.Advice;

/** Writes what must be known before an act, and how to go about it. */
final class Cautions {

    private final Device device;
    private final Html html;
    private final Set<String> told = new HashSet<>();

    Cautions(Device device, Html html) {
        this.device = device;
        this.html = html;
    }

    /** Puts the advice of several acts together, each piece once. */
    static List<Advice> of(List<List<Advice>> all, List<Integer> acts) {
        Set<String> seen = new LinkedHashSet<>();
        List<Advice> merged = new ArrayList<>();
        for (int at : acts) {
            for (Advice each : all.get(at)) {
                if (seen.add(each.kind() + each.text())) {
                    merged.add(each);
                }
            }
        }
        return merged;
    }

    /** Writes what comes before the act; a hazard in full where it comes first, named after. */
    void before(List<Advice> advice) {
        for (Advice each : advice) {
            if (isOfTheAct(each)) {
                continue;
            }
            String signal = each.signal().name();
            String words = Words.stop(each.text());
            Hazard hazard =
                    each.kind() == Advice.Kind.HAZARD
                            ? Objects.requireNonNull(device.hazards().get(each.subject()))
                            : null;
            if (hazard != null && told.add(hazard.id())) {
                words =
                        Words.stop(hazard.nature())
                                + " "
                                + Words.stop(hazard.consequence())
                                + " "
                                + Words.stop(hazard.avoidance());
            }
            html.raw("<p class=\"signal " + signal.toLowerCase(Locale.ROOT) + "\">")
                    .element("b", "", signal)
                    .element("span", "", words)
                    .raw("</p>");
        }
    }

    /** Writes what belongs to the act itself. */
    void with(List<Advice> advice) {
        for (Advice each : advice) {
            if (isOfTheAct(each)) {
                detail(
                        each.kind() == Advice.Kind.INSPECT && !each.text().startsWith("Look")
                                ? "Look: " + each.text()
                                : each.text());
            }
        }
    }

    void detail(String words) {
        html.element("p", "detail", Words.stop(words));
    }

    private static boolean isOfTheAct(Advice advice) {
        return switch (advice.kind()) {
            case TETHER, KEEP_HOLD, HANDLING, INSPECT -> true;
            case HAZARD, HANGING, LOOSE_SCREWS, LOOSE_PARTS, NO_WAY_BACK, WEAR, MAGNET -> false;
        };
    }
}
