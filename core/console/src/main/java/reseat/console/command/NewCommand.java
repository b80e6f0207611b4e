package reseat.console.command;

import java.io.Console;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import reseat.console.load.OurPlugins;
import reseat.files.DeviceFiles;
import reseat.files.Reading;
import reseat.spi.DeviceFamily;
import reseat.spi.DeviceTemplate;
import reseat.spi.Plugins;
import reseat.spi.Question;

/** Creates a device file for a new device from a template of its family. */
@Command(
        name = "new",
        description = "Create a device file for a new device from a template of its family.",
        customSynopsis = "reseat new FILE --family ID [OPTIONS]",
        sortOptions = false,
        footer = {
            "",
            "Examples:",
            "  reseat new wren.yaml --family slate",
            "  reseat new finch.yaml --family clamshell --name Finch --answers fan=no,cover-screws=10",
            "",
            "On a terminal it asks; elsewhere, and with --usual, missing answers get their"
                    + " defaults.",
            "reseat plugins lists the families."
        })
final class NewCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "FILE", description = "The file to create.")
    private Path file = Path.of("");

    @Option(
            names = "--family",
            required = true,
            paramLabel = "ID",
            description = "Family of the device.")
    private String family = "";

    @Option(
            names = "--template",
            paramLabel = "ID",
            description = "Template of the family (default: its first).")
    private @Nullable String template;

    @Option(
            names = "--id",
            paramLabel = "ID",
            description = "Id of the device (default: the name of the file).")
    private @Nullable String id;

    @Option(
            names = "--name",
            paramLabel = "TEXT",
            description = "Name of the device (default: its id).")
    private @Nullable String name;

    @Option(names = "--maker", paramLabel = "TEXT", description = "Maker of the device.")
    private @Nullable String maker;

    @Option(
            names = "--answers",
            split = ",",
            paramLabel = "KEY=VALUE",
            description = "Answers to the questions of the template.")
    private Map<String, String> given = new LinkedHashMap<>();

    @Option(names = "--usual", description = "Ask nothing; missing answers get their defaults.")
    private boolean usual;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        Plugins plugins = OurPlugins.get(spec.commandLine().getErr());
        DeviceFamily of = family(plugins);
        DeviceTemplate chosen = template(OurPlugins.asked(of, "family " + family, of::templates));
        if (Files.exists(file)) {
            throw new BadInput("reseat: " + file + " already exists; it was left unchanged.");
        }
        String what = "template " + chosen.id();
        List<Question> questions = OurPlugins.asked(of, what, chosen::questions);
        Map<String, String> answers = answers(questions, usual ? null : System.console());
        Files.writeString(
                file, chosen.write(answers), StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
        Reading reading = DeviceFiles.read(file, Optional.empty(), plugins.families());
        reading.problems().forEach(out::println);
        if (reading.device().isEmpty()) {
            out.println(
                    "The template "
                            + chosen.id()
                            + " of "
                            + family
                            + " produced a file with errors.");
            return 1;
        }
        String part = reading.device().get().parts().keySet().stream().toList().get(1);
        out.println(
                "Created " + file + ". Its values are typical; correct them against the device.");
        out.println("Then: reseat proofread " + file + "; reseat plan " + file + " --free " + part);
        return 0;
    }

    private DeviceFamily family(Plugins plugins) {
        return plugins.family(family)
                .orElseThrow(
                        () ->
                                DeviceArgs.unknown(
                                        "device family",
                                        family,
                                        plugins.families().stream()
                                                .map(DeviceFamily::id)
                                                .toList()));
    }

    private DeviceTemplate template(List<DeviceTemplate> all) {
        if (all.isEmpty()) {
            throw new BadInput("reseat: the family " + family + " has no template.");
        }
        String wanted = template == null ? all.get(0).id() : template;
        return all.stream()
                .filter(each -> each.id().equals(wanted))
                .findFirst()
                .orElseThrow(
                        () ->
                                DeviceArgs.unknown(
                                        "template",
                                        wanted,
                                        all.stream().map(DeviceTemplate::id).toList()));
    }

    private Map<String, String> answers(List<Question> questions, @Nullable Console console) {
        List<String> known = new ArrayList<>(questions.stream().map(Question::id).toList());
        for (Map.Entry<String, String> each : given.entrySet()) {
            if (!known.contains(each.getKey())) {
                throw DeviceArgs.unknown("question", each.getKey(), known);
            }
        }
        Map<String, String> answers = new LinkedHashMap<>();
        String stem = file.getFileName().toString().replaceFirst("\\.[^.]*$", "");
        String fallback = stem.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9._-]+", "-");
        String own = id == null ? fallback : id;
        if (!own.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,63}")) {
            throw new BadInput("reseat: \"" + own + "\" is not a valid id; give one with --id.");
        }
        answers.put("id", own);
        answers.put("name", quoted(name == null ? own : name));
        answers.put("maker", quoted(maker == null ? "" : maker));
        for (Question question : questions) {
            String told = given.get(question.id());
            String answer =
                    told != null
                            ? told
                            : console == null ? question.usual() : asked(question, console);
            Optional<String> wrong = question.wrongWith(answer);
            if (wrong.isPresent()) {
                throw new BadInput("reseat: " + question.id() + ": " + wrong.get() + ".");
            }
            answers.put(question.id(), answer);
        }
        return answers;
    }

    private static String asked(Question question, Console console) {
        String prompt =
                question.asks()
                        + (question.choices().isEmpty()
                                ? ""
                                : " (" + String.join(", ", question.choices()) + ")")
                        + " ["
                        + question.usual()
                        + "] ";
        while (true) {
            String line = console.readLine("%s", prompt);
            if (line == null || line.isBlank()) {
                return question.usual();
            }
            Optional<String> wrong = question.wrongWith(line.strip());
            if (wrong.isEmpty()) {
                return line.strip();
            }
            console.writer().println(wrong.get());
        }
    }

    /** Returns a text quoted for YAML. */
    private static String quoted(String text) {
        if (text.matches("[A-Za-z]([A-Za-z0-9 ._-]*[A-Za-z0-9])?")
                && !text.matches("(?i)true|false|null|yes|no|on|off|y|n")) {
            return text;
        }
        return '"'
                + text.replace("\\", "\\\\").replace("\"", "\\\"").replaceAll("\\p{Cntrl}", " ")
                + '"';
    }
}
