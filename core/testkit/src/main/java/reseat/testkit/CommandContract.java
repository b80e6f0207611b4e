package reseat.testkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import reseat.files.ResolvedJson;
import reseat.model.Device;
import reseat.spi.Command;
import reseat.spi.CommandInfo;
import reseat.spi.CommandOption;
import reseat.spi.Plugin;
import reseat.testkit.PluginContract.Breaches;

/** The contract of commands. */
final class CommandContract {

    private static final String NAME = "[a-z][a-z0-9]*(-[a-z0-9]+)*";

    /** Long enough for any machine; a command that ignores Ctrl-C never ends. */
    private static final Duration STUCK = Duration.ofMinutes(2);

    private final Plugin plugin;
    private final Device device;
    private final Breaches breaches;

    CommandContract(Plugin plugin, Device device, Breaches breaches) {
        this.plugin = plugin;
        this.device = device;
        this.breaches = breaches;
    }

    void verify() {
        for (Command command :
                breaches.listed("command", plugin::commands, Command::name, Command::name)) {
            breaches.guard("command " + command.name(), () -> command(command, List.of()));
        }
    }

    private void command(Command command, List<String> above) {
        List<String> path = new ArrayList<>(above);
        path.add(command.name());
        String who = "command " + String.join(" ", path);
        if (!command.name().matches(NAME)) {
            breaches.add("the name \"" + command.name() + "\" of a command is not valid");
        }
        CommandInfo info = command.info();
        if (!info.equals(command.info())) {
            breaches.add(who + " does not describe itself the same way twice");
        }
        help(who, path, info);
        options(who, info);
        wrongWords(who, path);
        if (command.actions().isEmpty()) {
            ends(who, path, info);
            return;
        }
        if (!info.options().isEmpty()) {
            breaches.add(who + " has actions, so it must not have options of its own");
        }
        Set<String> names = new HashSet<>();
        for (Command action : command.actions()) {
            if (!names.add(action.name())) {
                breaches.add(who + " has two actions " + action.name());
            }
            breaches.guard(who + " " + action.name(), () -> command(action, path));
        }
    }

    private void help(String who, List<String> path, CommandInfo info) {
        if (path.size() == 1 && info.examples().isEmpty()) {
            breaches.add(who + " has no example");
        }
        String called = "reseat " + String.join(" ", path);
        for (String example : info.examples()) {
            if (!(example + " ").startsWith(called + " ")) {
                breaches.add(who + ": the example \"" + example + "\" does not call " + called);
            }
        }
        for (String line : info.description()) {
            if (!line.endsWith(".")) {
                breaches.add(who + ": \"" + line + "\" is not a sentence");
            }
        }
        CommandTrial.Ran ran = trial(path, List.of("--help"));
        if (ran.code() != Command.FINE || ran.out().isBlank()) {
            breaches.add(who + " --help ended with " + ran.code() + ": " + ran.err());
        }
    }

    private void options(String who, CommandInfo info) {
        Set<String> names = new HashSet<>(Set.of("--help", "--version"));
        boolean mustBeLast = false;
        for (CommandOption option : info.options()) {
            if (!names.add(option.name())) {
                breaches.add(who + " has two options " + option.name());
            }
            if (!option.meaning().endsWith(".")) {
                breaches.add(who + ": the description of " + option.name() + " is not a sentence");
            }
            if (option.isParameter()) {
                if (mustBeLast) {
                    breaches.add(who + ": " + option.name() + " follows an optional one");
                }
                mustBeLast = option.repeatable() || !option.required();
            }
        }
    }

    private void wrongWords(String who, List<String> path) {
        CommandTrial.Ran ran = trial(path, List.of("--no-such-option"));
        if (ran.code() != Command.BAD_INPUT) {
            breaches.add(who + " accepts an unknown option: code " + ran.code());
        }
    }

    /** A command must end with any valid words, and promptly after Ctrl-C. */
    private void ends(String who, List<String> path, CommandInfo info) {
        try {
            Path folder = Files.createTempDirectory("reseat-contract");
            try {
                List<String> words = words(info, folder);
                CompletableFuture<CommandTrial.Ran> run =
                        CompletableFuture.supplyAsync(
                                () -> CommandTrial.of(plugin).cancelled().run(whole(path, words)));
                int code = run.get(STUCK.toMillis(), TimeUnit.MILLISECONDS).code();
                if (code < Command.FINE || code > Command.FAILED) {
                    breaches.add(who + " ended with " + code + ", which is not an exit code");
                }
            } finally {
                delete(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ExecutionException e) {
            breaches.add(who + " failed: " + e.getCause());
        } catch (TimeoutException e) {
            breaches.add(who + " did not end after Ctrl-C");
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Returns minimal valid words: only what is required. */
    private List<String> words(CommandInfo info, Path folder) throws IOException {
        List<String> words = new ArrayList<>();
        for (CommandOption option : info.options()) {
            if (!option.required()) {
                continue;
            }
            if (!option.isParameter()) {
                words.add(option.name());
            }
            words.add(
                    switch (option.kind()) {
                        case WHOLE, NUMBER -> "1";
                        case CHOICE -> option.choices().get(0);
                        case FILE, FOLDER -> folder.resolve("missing").toString();
                        case DEVICE ->
                                Files.writeString(
                                                folder.resolve("device.json"),
                                                ResolvedJson.write(device))
                                        .toString();
                        case PART -> device.parts().keySet().iterator().next();
                        case JOINT -> device.joints().keySet().iterator().next();
                        default -> "word";
                    });
        }
        return words;
    }

    private CommandTrial.Ran trial(List<String> path, List<String> words) {
        return CommandTrial.of(plugin).run(whole(path, words));
    }

    private static String[] whole(List<String> path, List<String> words) {
        return Stream.concat(path.stream(), words.stream()).toArray(String[]::new);
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }
}
