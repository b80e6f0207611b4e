package reseat.console.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import reseat.console.load.OurPlugins;
import reseat.files.ScriptFile;
import reseat.model.BadInputException;
import reseat.script.host.Fixture;
import reseat.script.host.ScriptHost;
import reseat.script.host.ScriptLimits;

/** Runs scripts on their fixtures. */
@Command(
        name = "test",
        description = "Run scripts on their fixtures: they must find exactly what is marked.",
        customSynopsis = "reseat script test FILE|FOLDER... [OPTIONS]",
        sortOptions = false,
        footer = {"", "Exit code 1: a script does not do what its fixtures say."})
final class ScriptTestCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;
    @Mixin private ShopFolder shop = new ShopFolder();

    @Parameters(
            arity = "1..*",
            paramLabel = "FILE|FOLDER",
            description = "Scripts, or folders with scripts.")
    private List<Path> places = List.of();

    @Override
    public Integer call() throws IOException, BadInputException {
        List<ScriptHost.Task> tasks = new ArrayList<>();
        List<Fixture> fixtures = new ArrayList<>();
        List<String> lacking = new ArrayList<>();
        for (ScriptFile script : ScriptCommand.read(places).scripts()) {
            List<Fixture> own = Fixture.of(script, OurPlugins.quietly().families());
            for (Fixture each : own) {
                tasks.add(new ScriptHost.Task(script, each.input()));
                fixtures.add(each);
            }
            if (own.stream().noneMatch(Fixture::hasFinding)) {
                lacking.add(script.file() + ": no fixture shows what it finds");
            }
            if (own.stream().noneMatch(Fixture::hasNearMiss)) {
                lacking.add(script.file() + ": no fixture shows a near miss");
            }
        }
        ScriptHost.Ran ran = new ScriptHost(ScriptLimits.USUAL, shop.approvals()).run(tasks);
        PrintWriter out = spec.commandLine().getOut();
        int bad = 0;
        for (int i = 0; i < tasks.size(); i++) {
            List<String> complaints = fixtures.get(i).complaints(ran.outcomes().get(i));
            bad += complaints.isEmpty() ? 0 : 1;
            out.println(
                    (complaints.isEmpty() ? "passed " : "failed ")
                            + tasks.get(i).script().info().id()
                            + "  "
                            + fixtures.get(i).file().getFileName());
            complaints.forEach(line -> out.println("       " + line));
        }
        lacking.forEach(out::println);
        out.println((tasks.size() - bad) + " of " + tasks.size() + " fixtures passed");
        return bad == 0 && lacking.isEmpty() ? 0 : 1;
    }
}
