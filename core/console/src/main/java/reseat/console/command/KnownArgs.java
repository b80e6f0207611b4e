package reseat.console.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import reseat.console.check.Sifted;
import reseat.files.KnownFiles;
import reseat.files.KnownFinding;
import reseat.model.BadInputException;

/** Known findings of the shop, and the date they are judged by. */
final class KnownArgs {

    @Option(
            names = "--today",
            paramLabel = "DATE",
            description = "Date to judge expiry by, such as 2026-11-25 (default: today).")
    private @Nullable LocalDate today;

    @Option(
            names = "--known",
            paramLabel = "FILE",
            description = "File of known findings that the shop accepts; they do not count.")
    private @Nullable Path file;

    @Option(
            names = "--accept",
            paramLabel = "REASON",
            description = "Add the current findings to the file of --known, with this reason.")
    private @Nullable String reason;

    @Option(
            names = "--until",
            paramLabel = "DATE",
            description = "Last day on which the findings of --accept are accepted.")
    private @Nullable LocalDate until;

    LocalDate today() {
        return today == null ? LocalDate.now(ZoneId.systemDefault()) : today;
    }

    /** Returns the known findings, or fails the command if options contradict each other. */
    List<KnownFinding> read() throws BadInputException {
        if ((reason == null) != (until == null)) {
            throw new BadInput("reseat: --accept and --until go together.");
        }
        if (reason != null && file == null) {
            throw new BadInput("reseat: --accept needs the file to add to: --known FILE.");
        }
        if (reason != null && reason.isBlank()) {
            throw new BadInput("reseat: --accept: give a reason, as a sentence.");
        }
        if (until != null && until.isBefore(today())) {
            throw new BadInput("reseat: --until: " + until + " is in the past.");
        }
        // a new file is missing or empty
        boolean begins = reason != null && file != null && file.toFile().length() == 0;
        return file == null || begins ? List.of() : KnownFiles.read(file);
    }

    /** Returns whether the current findings should be accepted. */
    boolean accepts() {
        return reason != null;
    }

    /** Adds the open findings to the file; returns a line that says so. */
    String accept(Sifted sifted) throws BadInputException {
        if (reason == null || until == null || file == null) {
            throw new IllegalStateException("nothing to accept");
        }
        List<KnownFinding> entries = sifted.accept(reason, until);
        if (!entries.isEmpty()) {
            try {
                KnownFiles.add(file, entries);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return file
                + ": "
                + entries.size()
                + (entries.size() == 1 ? " entry" : " entries")
                + " added, until "
                + until;
    }
}
