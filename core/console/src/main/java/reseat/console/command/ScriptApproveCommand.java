package reseat.console.command;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import reseat.files.ScriptFile;
import reseat.files.ScriptFile.Language;
import reseat.model.BadInputException;
import reseat.script.host.Approvals;

/** Approves one Java script with exactly its current content. */
@Command(
        name = "approve",
        description = "Approve a Java script for this shop, with exactly its current content.",
        customSynopsis = "reseat script approve FILE [OPTIONS]",
        sortOptions = false,
        footer = {"", "Once the file changes, it must be approved again."})
final class ScriptApproveCommand implements Callable<Integer> {

    /** Words that a check of a device rarely needs. */
    private static final Pattern WORTH_A_LOOK =
            Pattern.compile(
                    "\\b(java\\.(io|net|nio|lang\\.(reflect|invoke|foreign)|sql|rmi)|javax|sun|jdk"
                            + "|Process\\w*|Runtime|System|Thread|ClassLoader|Class|Files?|Path|Paths|URL|URI"
                            + "|Socket|HttpClient|Unsafe|native|exec|setAccessible|exit)\\b");

    @Spec private CommandSpec spec;
    @Mixin private ShopFolder shop = new ShopFolder();

    @Parameters(index = "0", paramLabel = "FILE", description = "The script.")
    private Path file = Path.of("");

    @Option(
            names = "--hash",
            paramLabel = "SHA256",
            description = "Approve without a prompt, if the file has this hash.")
    private @Nullable String hash;

    @Option(
            names = "--by",
            paramLabel = "NAME",
            description = "Who approves (default: the user's name).")
    private @Nullable String by;

    @Override
    public Integer call() throws IOException, BadInputException {
        ScriptFile script = ScriptFile.read(file);
        PrintWriter out = spec.commandLine().getOut();
        if (script.language() == Language.JAVASCRIPT) {
            out.println("JavaScript is sandboxed and needs no approval.");
            return 0;
        }
        Approvals approvals = shop.approvals();
        if (approvals.of(script).isPresent()) {
            out.println("It is already approved, with exactly this content.");
            return 0;
        }
        tell(script, out);
        if (!agreed(script, out)) {
            out.println("Not approved.");
            return 1;
        }
        String name = by == null ? System.getProperty("user.name", "somebody") : by;
        approvals.approve(script, name, LocalDate.now(ZoneId.systemDefault()));
        out.println("Approved by " + name + "; kept in " + approvals.file() + ".");
        return 0;
    }

    private static void tell(ScriptFile script, PrintWriter out) {
        out.println(script.info().id() + "  " + script.info().title());
        out.println("  finds    " + script.info().finds());
        out.println("  from     " + ScriptListCommand.from(script));
        out.println("  file     " + script.file());
        out.println("  sha256   " + script.sha256());
        out.println("  lines    " + script.text().lines().count());
        String words =
                WORTH_A_LOOK
                        .matcher(script.text())
                        .results()
                        .map(m -> m.group())
                        .distinct()
                        .sorted()
                        .collect(Collectors.joining(", "));
        out.println(
                "  suspicious words: " + (words.isEmpty() ? "none, which proves nothing" : words));
        out.println(
                "It is Java: it can read, change and send whatever you can. Read it before you approve it.");
    }

    private boolean agreed(ScriptFile script, PrintWriter out) throws IOException {
        String given = hash;
        if (given != null) {
            if (!given.equalsIgnoreCase(script.sha256())) {
                throw new BadInput(
                        "reseat: "
                                + script.file()
                                + " has the hash "
                                + script.sha256()
                                + ", not "
                                + given
                                + "; it is not the file that was reviewed");
            }
            return true;
        }
        out.print("Approve it? [y/N] ");
        out.flush();
        String answer = new BufferedReader(new InputStreamReader(System.in, UTF_8)).readLine();
        return answer != null
                && List.of("y", "yes").contains(answer.strip().toLowerCase(Locale.ROOT));
    }
}
