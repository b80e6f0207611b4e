package reseat.console.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import reseat.check.KnownFinding;
import reseat.check.Sifted;
import reseat.files.KnownFiles;
import reseat.model.BadInputException;

/** Findings that the shop knows of, and the day by which they are judged. */
final class KnownArgs {

    @Option(
            names = "--today",
            paramLabel = "DATE",
            description = "Day to judge expiry by, such as 2026-11-25; today if left out.")
    private @Nullable LocalDate today;

    @Option(
            names = "--known",
            paramLabel = "FILE",
            description = "Findings that the shop knows of and lives with; they do not count.")
    private @Nullable Path file;

    @Option(
            names = "--accept",
            paramLabel = "REASON",
            description = "Add what is found now to the file of --known, with this reason.")
    private @Nullable String reason;

    @Option(
            names = "--until",
            paramLabel = "DATE",
            description = "Last day on which what --accept adds is lived with.")
    private @Nullable LocalDate until;

    LocalDate today() {
        return today == null ? LocalDate.now(ZoneId.systemDefault()) : today;
    }

    /** Returns what is known; ends the command where the options do not go together. */
    List<KnownFinding> read() throws BadInputException {
        if ((reason == null) != (until == null)) {
            throw new BadInput("reseat: --accept and --until go together.");
        }
        if (reason != null && file == null) {
            throw new BadInput("reseat: --accept needs the file to add to: --known FILE.");
        }
        if (reason != null && reason.isBlank()) {
            throw new BadInput("reseat: --accept: say why, in a sentence.");
        }
        if (until != null && until.isBefore(today())) {
            throw new BadInput("reseat: --until: " + until + " is over.");
        }
        // a file to begin is missing, or empty
        boolean begins = reason != null && file != null && file.toFile().length() == 0;
        return file == null || begins ? List.of() : KnownFiles.read(file);
    }

    /** Tells whether what is found is to be accepted. */
    boolean accepts() {
        return reason != null;
    }

    /** Adds what is open to the file; returns a line on it. */
    String accept(Sifted sifted) throws BadInputException {
        if (reason == null || until == null || file == null) {
            throw new IllegalStateException("nothing is to be accepted");
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
