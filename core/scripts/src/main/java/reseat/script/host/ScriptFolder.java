package reseat.script.host;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import reseat.files.ScriptFile;
import reseat.files.ScriptFile.Language;
import reseat.model.BadInputException;
import reseat.model.Origin;
import reseat.model.Problem;

/**
 * The scripts of a folder.
 *
 * @param scripts the readable scripts, in the order of their names
 * @param problems what is wrong with the others
 */
public record ScriptFolder(List<ScriptFile> scripts, List<Problem> problems) {

    private static final int DEPTH = 3;

    public ScriptFolder {
        scripts = List.copyOf(scripts);
        problems = List.copyOf(problems);
    }

    /**
     * Reads all scripts below some files and folders, without running any.
     *
     * @throws IOException if a folder cannot be read
     */
    public static ScriptFolder read(List<Path> places) throws IOException {
        List<ScriptFile> scripts = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (Path place : places) {
            for (Path file : filesOf(place)) {
                try {
                    ScriptFile script = ScriptFile.read(file);
                    scripts.stream()
                            .filter(other -> other.info().id().equals(script.info().id()))
                            .findFirst()
                            .ifPresent(
                                    other ->
                                            problems.add(
                                                    Problem.error(
                                                            new Origin(script.file(), 0, 0),
                                                            "it has the same id as "
                                                                    + other.file())));
                    scripts.add(script);
                } catch (BadInputException e) {
                    problems.addAll(e.problems());
                }
            }
        }
        return new ScriptFolder(scripts, problems);
    }

    private static List<Path> filesOf(Path place) throws IOException {
        if (!Files.isDirectory(place)) {
            return List.of(place);
        }
        try (Stream<Path> all = Files.walk(place, DEPTH)) {
            return all.filter(Files::isRegularFile)
                    .filter(
                            file ->
                                    Arrays.stream(Language.values())
                                            .anyMatch(l -> file.toString().endsWith(l.ending())))
                    .sorted()
                    .toList();
        }
    }
}
