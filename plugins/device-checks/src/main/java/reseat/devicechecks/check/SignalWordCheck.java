package reseat.devicechecks.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.model.Hazard;
import reseat.model.Part;
import reseat.model.Severity;
import reseat.model.Signal;

/** Finds signal words that are milder than the consequence they announce. */
final class SignalWordCheck implements Check {

    private static final CheckInfo INFO =
            new CheckInfo(
                    "signal-word-mild",
                    "Signal word too mild",
                    "A hazard with CAUTION or NOTICE whose text speaks of death, serious injury, fire, explosion, poison or mains; a NOTICE that speaks of any injury; a cell whose gravest hazard is neither DANGER nor WARNING.",
                    "People read past a word that is too mild. ANSI Z535.6: WARNING where death or serious injury could follow, CAUTION for minor or moderate injury, NOTICE for damage to property alone.",
                    Severity.ERROR,
                    List.of("hazards", "safety"),
                    List.of());

    private static final String INJURY = "(?:injur|hurt|wound|burn|harm|cut|pain)\\w*";

    private static final Pattern GRAVE =
            Texts.word(
                    "deaths?",
                    "deadly",
                    "(?:you|people|person|someone|child|children|technician) (?:\\w+ )?dies?",
                    "kill(?:s|ed)? (?:a person|people|you|someone|the person|whoever|anyone|at once)",
                    "fatal(?:ly|ity|ities)?",
                    "lethal",
                    "life[- ]threatening",
                    "danger to life",
                    "(?:serious|severe|grave|permanent|irreversible)(?:ly)? (?:\\w+ )?" + INJURY,
                    "blind(?:s|ed|ness)?",
                    "los(?:e|s|es|ing) (?:of )?(?:an? |the |your |one's )?(?:eye|sight|finger|hand|limb|hearing|vision)s?",
                    "amputat\\w*",
                    "fires?",
                    "flames?",
                    "ignit\\w+",
                    "explo(?:de|des|sion|sions|sive)",
                    "bursts? into",
                    "electrocut\\w+",
                    "electric shocks?",
                    "poison\\w*",
                    "toxic",
                    "suffocat\\w*",
                    "thermal runaway",
                    "pacemakers?",
                    "(?:it|cell|battery|pack|device|solvent|vapour|adhesive) (?:can |may |will |could )?burns?(?! out)");

    private static final Pattern GRAVE_NATURE =
            Texts.word("mains voltage", "high voltage", "line voltage", "live conductors?");

    private static final Pattern ANY =
            Texts.word(
                    "injur\\w*",
                    "hurts?",
                    "wounds?",
                    "bruis\\w*",
                    "burns?(?! out)",
                    "scald\\w*",
                    "skin",
                    "eyes?",
                    "fingers?",
                    "pinch\\w*",
                    "cuts? (?:the |your |a )?(?:hand|finger|skin|palm)s?",
                    "fumes",
                    "dazzl\\w*",
                    "hearing");

    @Override
    public CheckInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> run(CheckInput input) {
        List<Finding> found = new ArrayList<>();
        Set<String> told = new LinkedHashSet<>();
        for (Hazard hazard : input.device().hazards().values()) {
            Optional<String> word = milder(hazard);
            if (word.isPresent() && told.add(hazard.id())) {
                boolean grave = grave(hazard).isPresent();
                found.add(
                        input.finding("/hazards/" + hazard.id() + "/signal")
                                .evidence("consequence: " + hazard.consequence())
                                .says(
                                        "Hazard "
                                                + hazard.id()
                                                + " speaks of \""
                                                + word.get()
                                                + "\", and its signal word is only "
                                                + hazard.signal()
                                                + ".",
                                        grave
                                                ? "Use WARNING, or DANGER where it will happen for certain."
                                                : "Use CAUTION, or WARNING where the injury could be serious."));
            }
        }
        for (Part part : Hazards.cells(input.device())) {
            Hazards.of(input.device(), part).stream()
                    .filter(hazard -> Hazards.speaksOfCell(hazard, part))
                    .min(Comparator.comparing(Hazard::signal))
                    .filter(hazard -> hazard.signal().compareTo(Signal.WARNING) > 0)
                    .filter(hazard -> told.add(hazard.id()))
                    .ifPresent(
                            hazard ->
                                    found.add(
                                            input.finding("/hazards/" + hazard.id() + "/signal")
                                                    .evidence("it is the gravest of " + part.id())
                                                    .says(
                                                            "Hazard "
                                                                    + hazard.id()
                                                                    + " is about a cell, which can burn, and its signal word is only "
                                                                    + hazard.signal()
                                                                    + ".",
                                                            "Use WARNING.")));
        }
        return found;
    }

    private static Optional<String> milder(Hazard hazard) {
        return switch (hazard.signal()) {
            case DANGER, WARNING -> Optional.empty();
            case CAUTION -> grave(hazard);
            case NOTICE -> grave(hazard).or(() -> first(ANY, hazard.consequence()));
        };
    }

    private static Optional<String> grave(Hazard hazard) {
        return first(GRAVE, hazard.consequence()).or(() -> first(GRAVE_NATURE, hazard.nature()));
    }

    private static Optional<String> first(Pattern what, String text) {
        if (!Texts.says(what, text)) {
            return Optional.empty();
        }
        Matcher matcher = what.matcher(Texts.lower(text));
        return matcher.find() ? Optional.of(matcher.group()) : Optional.empty();
    }
}
