package reseat.console.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import reseat.files.ScriptFile;
import reseat.files.ScriptFile.Language;
import reseat.script.host.Approvals;
import reseat.text.JsonText;

/** Lists scripts with hash and origin, without running any. */
@Command(
        name = "list",
        description =
                "List scripts: what they find, their origin and hash, and whether they may run.",
        customSynopsis = "reseat script list [FILE|FOLDER...] [OPTIONS]",
        sortOptions = false)
final class ScriptListCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;
    @Mixin private ShopFolder shop = new ShopFolder();

    @Parameters(
            arity = "0..*",
            paramLabel = "FILE|FOLDER",
            description = "Scripts, or folders with scripts; default: scripts.")
    private List<Path> places = List.of(Path.of("scripts"));

    @Option(names = "--json", description = "Print the result as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        List<ScriptFile> scripts = ScriptCommand.read(places).scripts();
        Approvals approvals = shop.approvals();
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.print(
                    JsonText.of(
                            JsonText.map(
                                    "format",
                                    "reseat-scripts/1",
                                    "scripts",
                                    scripts.stream().map(s -> shape(s, approvals)).toList())));
            return 0;
        }
        for (ScriptFile script : scripts) {
            out.println(script.info().id() + "  " + script.info().title());
            out.println("    " + runs(script, approvals) + "; from " + from(script));
            out.println("    " + script.file());
            out.println("    sha256 " + script.sha256());
        }
        out.println(scripts.size() + (scripts.size() == 1 ? " script" : " scripts"));
        return 0;
    }

    /** Returns the origin of a script. */
    static String from(ScriptFile script) {
        return script.from().isEmpty() ? "an unnamed source" : script.from();
    }

    private static String runs(ScriptFile script, Approvals approvals) {
        if (script.language() == Language.JAVASCRIPT) {
            return "JavaScript, sandboxed";
        }
        return approvals
                .of(script)
                .map(a -> "Java, approved on " + a.day() + " by " + a.by())
                .orElse("Java, not approved");
    }

    private static Object shape(ScriptFile script, Approvals approvals) {
        return JsonText.map(
                "id", script.info().id(),
                "title", script.info().title(),
                "finds", script.info().finds(),
                "language", script.language(),
                "file", script.file(),
                "from", script.from(),
                "sha256", script.sha256(),
                "runs",
                        script.language() == Language.JAVASCRIPT
                                || approvals.of(script).isPresent());
    }
}
