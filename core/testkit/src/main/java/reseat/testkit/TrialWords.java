package reseat.testkit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.spi.Command;
import reseat.spi.CommandException;
import reseat.spi.CommandInfo;
import reseat.spi.CommandOption;
import reseat.spi.CommandOption.Kind;

/** Parses the words of a command, as the program does. */
final class TrialWords {

    private final List<CommandOption> options;
    private final Map<String, List<String>> values = new LinkedHashMap<>();

    private TrialWords(List<CommandOption> options) {
        this.options = options;
        options.forEach(option -> values.put(option.name(), new ArrayList<>()));
    }

    /**
     * Returns the values of all options, by name.
     *
     * @throws CommandException if the words are invalid
     */
    static Map<String, List<String>> of(List<CommandOption> options, List<String> words) {
        TrialWords trial = new TrialWords(options);
        trial.take(new ArrayDeque<>(words));
        trial.fill();
        return trial.values;
    }

    private void take(Deque<String> words) {
        Deque<CommandOption> parameters =
                new ArrayDeque<>(options.stream().filter(CommandOption::isParameter).toList());
        while (!words.isEmpty()) {
            String word = words.remove();
            if (word.startsWith("--")) {
                option(word, words);
                continue;
            }
            CommandOption parameter = parameters.peek();
            if (parameter == null) {
                throw wrong("unmatched argument: '" + word + "'");
            }
            add(parameter, word);
            if (!parameter.repeatable()) {
                parameters.remove();
            }
        }
    }

    private void option(String word, Deque<String> words) {
        String name = word.replaceFirst("=.*", "");
        CommandOption option =
                options.stream()
                        .filter(each -> each.name().equals(name))
                        .findFirst()
                        .orElseThrow(() -> wrong("unknown option: '" + word + "'"));
        boolean joined = word.contains("=");
        if (option.kind() == Kind.FLAG) {
            if (joined) {
                throw wrong(name + " does not take a value");
            }
            add(option, "true");
        } else if (joined) {
            add(option, word.substring(name.length() + 1));
        } else if (words.isEmpty()) {
            throw wrong("missing value of " + name);
        } else {
            add(option, words.remove());
        }
    }

    private void add(CommandOption option, String text) {
        List<String> given = values.getOrDefault(option.name(), List.of());
        if (!given.isEmpty() && !option.repeatable()) {
            throw wrong(option.name() + " is given twice");
        }
        for (String value : option.isListed() ? List.of(text.split(",")) : List.of(text)) {
            check(option, value);
            given.add(value);
        }
    }

    private static void check(CommandOption option, String value) {
        String expected =
                switch (option.kind()) {
                    case WHOLE -> isLong(value) ? "" : "a whole number";
                    case NUMBER -> isDouble(value) ? "" : "a number";
                    case CHOICE ->
                            option.choices().contains(value)
                                    ? ""
                                    : "one of " + String.join(", ", option.choices());
                    default -> "";
                };
        if (!expected.isEmpty()) {
            throw wrong(option.name() + ": found \"" + value + "\", expected " + expected);
        }
    }

    private static boolean isLong(String value) {
        try {
            Long.parseLong(value);
            return true;
        } catch (NumberFormatException e) {
            return false;
        }
    }

    private static boolean isDouble(String value) {
        try {
            Double.parseDouble(value);
            return true;
        } catch (NumberFormatException e) {
            return false;
        }
    }

    private void fill() {
        for (CommandOption option : options) {
            List<String> given = values.getOrDefault(option.name(), List.of());
            if (given.isEmpty() && option.required()) {
                throw wrong("missing: " + option.name());
            }
            if (given.isEmpty()) {
                option.usual().ifPresent(given::add);
            }
        }
    }

    private static CommandException wrong(String what) {
        return new CommandException("reseat: " + what);
    }

    /** Returns the help of a command, without the layout of the program. */
    static List<String> help(Command command) {
        CommandInfo info = command.info();
        List<String> lines = new ArrayList<>(info.description());
        info.options().forEach(option -> lines.add("  " + option.name() + "  " + option.meaning()));
        command.actions()
                .forEach(
                        action ->
                                lines.add(
                                        "  "
                                                + action.name()
                                                + "  "
                                                + action.info().description().get(0)));
        info.examples().forEach(example -> lines.add("  " + example));
        lines.addAll(info.notes());
        return lines;
    }
}
