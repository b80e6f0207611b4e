package reseat.console.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import reseat.check.Check;
import reseat.console.load.PersonalFolders;
import reseat.files.ScriptFile;
import reseat.model.BadInputException;
import reseat.script.host.Approvals;
import reseat.script.host.ScriptChecks;

/** Script files that are run along with the checks. */
final class ScriptArgs {

    @Option(
            names = "--scripts",
            paramLabel = "PATH",
            description = "Also run these scripts; folders are searched with their subfolders.")
    private List<Path> paths = new ArrayList<>();

    boolean given() {
        return !paths.isEmpty();
    }

    /**
     * Returns the scripts as checks. Unapproved Java is skipped with a message to {@code err}; an
     * unreadable file fails the command.
     */
    List<Check> checks(ScriptChecks pool, PrintWriter err) throws BadInputException {
        try {
            Approvals approvals = Approvals.in(PersonalFolders.here().settings());
            List<Check> checks = new ArrayList<>();
            for (Path file : files()) {
                ScriptFile script = ScriptFile.read(file);
                Optional<String> refusal =
                        script.language() == ScriptFile.Language.JAVA
                                ? approvals.refusal(script)
                                : Optional.empty();
                if (refusal.isPresent()) {
                    err.println("reseat: left out: " + file + ": " + refusal.get());
                } else {
                    checks.add(pool.check(script));
                }
            }
            return checks;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private List<Path> files() throws IOException {
        List<Path> files = new ArrayList<>();
        for (Path path : paths) {
            if (!Files.isDirectory(path)) {
                files.add(path);
                continue;
            }
            try (Stream<Path> found = Files.walk(path)) {
                found.filter(ScriptArgs::isScript).sorted().forEach(files::add);
            }
        }
        return files;
    }

    private static boolean isScript(Path file) {
        String name = String.valueOf(file.getFileName());
        return Files.isRegularFile(file)
                && Stream.of(ScriptFile.Language.values())
                        .anyMatch(language -> name.endsWith(language.ending()));
    }
}
