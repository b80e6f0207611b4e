package reseat.console.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import reseat.console.prompt.Front;
import reseat.console.prompt.Tongue;

/** Opens the scripting console. */
@Command(
        name = "console",
        description = "Open an interactive console for JavaScript and Java.",
        customSynopsis = {
            "reseat console [--lang js|java] [OPTIONS]",
            "       reseat console -e CODE [--lang js|java]",
            "       reseat console [--lang js|java] < FILE"
        },
        sortOptions = false,
        footer = {
            "",
            "Examples:",
            "  reseat console",
            "  reseat console -e 'check(device(\"samples/quill/quill.yaml\"))'",
            "  reseat console --lang java < my-session.java",
            "",
            "Type help in it for help. It runs console.js and console.java from",
            "$RESEAT_HOME (or the folder reseat in your settings) when it starts. Input",
            "from a pipe or -e stops at the first error, with exit code 2."
        })
final class ConsoleCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;

    @Mixin private OutputArgs output = new OutputArgs();

    @Option(names = "-e", paramLabel = "CODE", description = "Run this code and exit.")
    private @Nullable String code;

    @Option(
            names = "--lang",
            paramLabel = "js|java",
            description = "Initial language (default: js).")
    private Tongue tongue = Tongue.JS;

    @Option(names = "--no-start-up", description = "Do not run console.js and console.java.")
    private boolean plain;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        Front front = new Front(tongue, !plain, output.terminal(), out, err);
        return code != null ? front.run(code) : front.run();
    }
}
