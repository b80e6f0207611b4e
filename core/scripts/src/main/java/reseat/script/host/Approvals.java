package reseat.script.host;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.files.ScriptFile;

/**
 * The Java scripts that a shop has approved, by file hash, so that a changed file needs a new
 * approval. Stored as tab-separated lines in the shop's settings folder.
 */
public final class Approvals {

    private static final String HEAD = "sha256\tid\tfrom\tapproved\tby";

    private final Path file;
    private final List<Approval> all;

    /**
     * One approved script.
     *
     * @param sha256 hash of the file
     * @param id id of the check
     * @param from its origin
     * @param day when it was approved
     * @param by who approved it
     */
    public record Approval(String sha256, String id, String from, String day, String by) {}

    private Approvals(Path file, List<Approval> all) {
        this.file = file;
        this.all = List.copyOf(all);
    }

    /** Returns empty approvals that are not stored. */
    public static Approvals none() {
        return new Approvals(Path.of(""), List.of());
    }

    /**
     * Reads the approvals of a shop.
     *
     * @param folder the shop's settings folder; need not exist
     */
    public static Approvals in(Path folder) throws IOException {
        Path file = folder.resolve("approved-scripts.tsv");
        List<Approval> all = new ArrayList<>();
        if (Files.exists(file)) {
            for (String line : Files.readAllLines(file, UTF_8)) {
                String[] words = line.split("\t", -1);
                if (words.length == 5 && !line.equals(HEAD)) {
                    all.add(new Approval(words[0], words[1], words[2], words[3], words[4]));
                }
            }
        }
        return new Approvals(file, all);
    }

    /** Returns the file that stores the approvals. */
    public Path file() {
        return file;
    }

    /** Returns the approval of exactly this content, if any. */
    public Optional<Approval> of(ScriptFile script) {
        return all.stream().filter(each -> each.sha256().equals(script.sha256())).findFirst();
    }

    /** Returns why a script may not run, and what to do; empty if it may. */
    public Optional<String> refusal(ScriptFile script) {
        if (of(script).isPresent()) {
            return Optional.empty();
        }
        Optional<Approval> before =
                all.stream()
                        .filter(each -> each.id().equals(script.info().id()))
                        .reduce((first, last) -> last);
        String what =
                before.map(
                                each ->
                                        "it changed since "
                                                + each.by()
                                                + " approved it on "
                                                + each.day())
                        .orElse("it is Java, which can do anything, and it is not approved here");
        return Optional.of(what + "; read it, then: reseat script approve " + script.file());
    }

    /**
     * Approves exactly this content and stores the approval.
     *
     * @param by who approves
     * @param day when
     */
    public Approvals approve(ScriptFile script, String by, LocalDate day) throws IOException {
        if (of(script).isPresent()) {
            return this;
        }
        List<Approval> more = new ArrayList<>(all);
        more.add(
                new Approval(
                        script.sha256(),
                        script.info().id(),
                        plain(script.from()),
                        day.toString(),
                        plain(by)));
        StringBuilder text = new StringBuilder(HEAD).append('\n');
        for (Approval each : more) {
            text.append(
                    String.join(
                            "\t", each.sha256(), each.id(), each.from(), each.day(), each.by()));
            text.append('\n');
        }
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        Path beside = file.resolveSibling(file.getFileName() + ".new");
        Files.writeString(beside, text, UTF_8);
        Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
        return new Approvals(file, more);
    }

    private static String plain(String text) {
        return JsTrouble.shown(text);
    }
}
