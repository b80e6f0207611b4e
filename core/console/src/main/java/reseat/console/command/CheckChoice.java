package reseat.console.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import picocli.CommandLine.Option;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.script.host.Setting;
import reseat.text.Nearest;

/** Which checks to run, and their parameters. */
final class CheckChoice {

    @Option(
            names = "--only",
            paramLabel = "CHECK",
            split = ",",
            description = "Run only these checks, by id or tag; `reseat checks` lists them.")
    private List<String> only = new ArrayList<>();

    @Option(
            names = "--without",
            paramLabel = "CHECK",
            split = ",",
            description = "Skip these checks, by id or tag.")
    private List<String> without = new ArrayList<>();

    @Option(
            names = "--set",
            paramLabel = "CHECK.NAME=VALUE",
            description = "Set a parameter of a check, such as protrusion-into-hazard.nearMm=0.3.")
    private List<String> settings = new ArrayList<>();

    /** Returns what a check says of itself; empty where it cannot, which the runner tells. */
    static Optional<CheckInfo> info(Check check) {
        try {
            return Optional.of(check.info());
        } catch (RuntimeException | LinkageError e) {
            return Optional.empty();
        }
    }

    /** Returns the descriptions of the checks. */
    static List<CheckInfo> infos(List<Check> checks) {
        return checks.stream().flatMap(check -> info(check).stream()).toList();
    }

    /** Returns the selected checks, or fails the command if one is unknown. */
    List<Check> chosen(List<Check> all) {
        Set<String> known = new LinkedHashSet<>();
        Set<String> tags = new TreeSet<>();
        for (CheckInfo info : infos(all)) {
            known.add(info.id());
            tags.addAll(info.tags());
        }
        Set<String> both = new LinkedHashSet<>(known);
        both.addAll(tags);
        for (String word : words()) {
            if (!both.contains(word)) {
                throw new BadInput(
                        "reseat: there is no check or tag \""
                                + word
                                + "\"."
                                + Nearest.question(word, both)
                                + " Checks: "
                                + String.join(", ", known)
                                + ". Tags: "
                                + String.join(", ", tags)
                                + ".");
            }
        }
        return all.stream()
                .filter(check -> only.isEmpty() || named(check, only))
                .filter(check -> !named(check, without))
                .toList();
    }

    private List<String> words() {
        List<String> words = new ArrayList<>(only);
        words.addAll(without);
        return words;
    }

    private static boolean named(Check check, List<String> words) {
        return info(check)
                .filter(i -> words.contains(i.id()) || i.tags().stream().anyMatch(words::contains))
                .isPresent();
    }

    /** Returns an input with the given parameters. */
    CheckInput set(CheckInput input) {
        return set(input, settings);
    }

    /** Returns an input with these parameters, or fails the command if one is invalid. */
    static CheckInput set(CheckInput input, List<String> settings) {
        CheckInput set = input;
        for (String setting : settings) {
            set = setting(setting).on(set);
        }
        return set;
    }

    private static Setting setting(String text) {
        try {
            return Setting.of(text);
        } catch (IllegalArgumentException e) {
            throw new BadInput("reseat: --set: " + e.getMessage() + ".");
        }
    }

    /** Fails the command if a parameter is unknown or its value is invalid. */
    void checkSettings(List<Check> all) {
        Map<String, CheckInfo> known = new LinkedHashMap<>();
        infos(all).forEach(info -> known.put(info.id(), info));
        for (String text : settings) {
            Setting setting = setting(text);
            CheckInfo info = known.get(setting.check());
            if (info == null) {
                throw DeviceArgs.unknown("check", setting.check(), List.copyOf(known.keySet()));
            }
            checkSetting(info, setting);
        }
    }

    private static void checkSetting(CheckInfo info, Setting setting) {
        List<String> names = info.parameters().stream().map(CheckInfo.Parameter::name).toList();
        if (!names.contains(setting.name())) {
            throw DeviceArgs.unknown("parameter of " + info.id(), setting.name(), names);
        }
        CheckInfo.Parameter parameter = info.parameter(setting.name());
        if (!parameter.unit().isEmpty()) {
            try {
                parameter.number(setting.value());
            } catch (IllegalArgumentException e) {
                throw new BadInput("reseat: --set: " + info.id() + "." + e.getMessage() + ".");
            }
        }
    }
}
