package reseat.console.prompt;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import reseat.console.prompt.Talk.Taken;
import reseat.model.Device;

/** Saves a session to a file: as a script that can be run again, or as a check with its device. */
final class Keep {

    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    private final Console console;
    private final Talk talk;

    Keep(Console console, Talk talk) {
        this.console = console;
        this.talk = talk;
    }

    /** Saves the session under a file name, or as "check" and an id. */
    Taken keep(String what) {
        try {
            return what.startsWith("check ") || what.equals("check")
                    ? check(what.substring("check".length()).strip())
                    : script(what);
        } catch (IOException e) {
            talk.line("Cannot write: " + e.getMessage());
            return Taken.WRONG;
        }
    }

    private Taken script(String name) throws IOException {
        String plain = name.replaceAll("^([\"'])(.*)\\1$", "$2");
        Optional<Tongue> tongue =
                List.of(Tongue.values()).stream()
                        .filter(each -> plain.endsWith(each.suffix()))
                        .findFirst();
        if (tongue.isEmpty()) {
            talk.line("Name a file that ends in .js or .java: the language to keep.");
            return Taken.WRONG;
        }
        List<Evaluation> inputs = fine(tongue.get());
        if (inputs.isEmpty()) {
            talk.line("Nothing was typed in " + tongue.get().title() + " yet.");
            return Taken.WRONG;
        }
        Path file = console.folder().resolve(plain);
        StringBuilder text = new StringBuilder();
        text.append("// Kept from a session of the console; \"follow ")
                .append(plain)
                .append("\" runs it.\n");
        for (Evaluation each : inputs) {
            text.append(each.text().stripTrailing()).append('\n');
        }
        return write(file, text.toString()) ? Taken.FINE : Taken.WRONG;
    }

    private Taken check(String id) throws IOException {
        if (!ID.matcher(id).matches()) {
            talk.line(
                    "keep check needs an id in lower case with hyphens: keep check"
                            + " screw-near-cell");
            return Taken.WRONG;
        }
        List<Evaluation> inputs = fine(talk.tongue());
        Optional<Evaluation> last =
                inputs.isEmpty() ? Optional.empty() : Optional.of(inputs.get(inputs.size() - 1));
        List<Device> read = console.bench().devicesRead();
        if (last.isEmpty() || !(last.get().outcome().value() instanceof Collection<?> values)) {
            talk.line("The last value must be a list: what is in it becomes findings.");
            return Taken.WRONG;
        }
        if (read.isEmpty()) {
            talk.line(
                    "Read a device first: the check is kept with the device that it was tried on.");
            return Taken.WRONG;
        }
        Optional<String> script = new CheckText(id, talk.tongue(), inputs, values).text();
        if (script.isEmpty()) {
            talk.line("The last value must hold findings, parts, joints or rows of facts().");
            return Taken.WRONG;
        }
        Device device = read.get(read.size() - 1);
        Path folder = console.folder().resolve(id);
        Path file = folder.resolve(id + talk.tongue().suffix());
        String name = device.id() + device.variant().map(v -> "-" + v).orElse("");
        Path fixture = folder.resolve("fixtures").resolve(name + ".yaml");
        boolean done = write(file, script.get()) && write(fixture, Marked.text(device, values));
        if (done) {
            talk.line("Say in its first lines what it finds and why that matters, then try it:");
            talk.line("  reseat script test " + file);
        }
        return done ? Taken.FINE : Taken.WRONG;
    }

    private List<Evaluation> fine(Tongue tongue) {
        return console.session().history().stream()
                .filter(each -> each.tongue() == tongue && each.isFine())
                .toList();
    }

    private boolean write(Path file, String text) throws IOException {
        if (Files.exists(file)) {
            talk.line(file + " already exists; nothing was overwritten.");
            return false;
        }
        Path folder = file.getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        Files.writeString(file, text, UTF_8);
        talk.line("Written: " + file);
        return true;
    }
}
