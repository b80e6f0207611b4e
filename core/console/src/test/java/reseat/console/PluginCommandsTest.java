package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import reseat.console.command.ReseatCommand;
import reseat.console.load.BuiltInCommands;
import reseat.files.PluginFiles;
import reseat.spi.Command;

/** Commands of plugins are commands like our own; those of the plugins that ship show it. */
class PluginCommandsTest {

    private static final List<String> OF_PLUGINS =
            PluginFiles.bundled().commands().stream().map(Command::name).toList();

    @Test
    void theNamesOfOurOwnAreThoseThatAPluginMayNotHave() {
        Set<String> all = new TreeSet<>(ReseatCommand.understanding().getSubcommands().keySet());
        OF_PLUGINS.forEach(all::remove);

        assertEquals(new TreeSet<>(BuiltInCommands.NAMES), all);
    }

    @Test
    void ourOwnAreFoundWithoutThem() {
        for (String name : BuiltInCommands.NAMES) {
            Set<String> known = ReseatCommand.understanding(name).getSubcommands().keySet();
            if (!name.equals("completion")) {
                assertEquals(Set.of(name), known);
            }
        }
    }

    @Test
    void theyAreInTheHelpOfAll() {
        String help = Ran.reseat("--help").out();

        for (String name : OF_PLUGINS) {
            assertTrue(help.lines().anyMatch(line -> line.startsWith("  " + name + " ")), help);
        }
    }

    @Test
    void shellsCompleteThem() {
        String script = Ran.reseat("completion").out();

        assertTrue(script.contains("_picocli_reseat_stock_reserve"), script);
        assertTrue(script.contains("'--put-back'"), script);
    }

    @Test
    void theyAreSuggested() {
        Ran ran = Ran.reseat("tryas");

        assertEquals(2, ran.code());
        assertTrue(ran.err().contains("Did you mean: reseat trays"), ran.err());
        assertTrue(Ran.reseat("stock", "lits").err().contains("Did you mean: stock list?"));
    }

    @Test
    void wrongWordsPointAtTheirHelp() {
        assertEquals(
                "reseat: Unknown option: '--nope'\nTry 'reseat stock list --help'.\n",
                Ran.reseat("stock", "list", "s.yaml", "--nope").err());
        assertEquals(
                "reseat: --warn: found \"x\", expected a whole number\nTry 'reseat today --help'.\n",
                Ran.reseat("today", "s.yaml", "d.yaml", "--warn", "x").err());
        assertEquals(
                "reseat: Name a command.\nTry 'reseat stock --help'.\n", Ran.reseat("stock").err());
    }

    @Test
    void everyActionHasHelpAndVersion() {
        for (String action : List.of("list", "open", "reserve", "use", "release", "settle")) {
            Ran help = Ran.reseat("stock", action, "--help");
            assertEquals(0, help.code(), help.err());
            assertTrue(help.out().startsWith("Usage: reseat stock " + action + " "), help.out());
            assertTrue(help.out().contains("  2   wrong usage or bad input"), help.out());
            assertEquals(0, Ran.reseat("stock", action, "--version").code());
        }
    }

    @Test
    void theOptionsOfPlansReadAsInOurOwnCommand() {
        String ours = words(Ran.reseat("plan", "--help").out());
        String theirs = Ran.reseat("today", "--help").out();
        String shared =
                words(
                        theirs.substring(
                                theirs.indexOf("--free=PART[,"), theirs.indexOf("--put-back")));
        String effort = words(theirs.substring(theirs.indexOf("--time"), theirs.indexOf("--json")));

        for (String option : shared.split(" (?=--(free|reach|all|forbid|require|permit))")) {
            assertHas(ours, option);
        }
        assertHas(ours, effort);
    }

    @Test
    void aPluginTellsItsCommands() {
        assertTrue(
                Ran.reseat("plugins", "stock-desk").out().contains("    commands: stock, today\n"));
    }

    /** Wherever the lines are broken. */
    private static void assertHas(String help, String part) {
        assertTrue(
                help.replace(" ", "").contains(part.replace(" ", "")),
                () -> part + " is not in " + help);
    }

    private static String words(String help) {
        return help.replaceAll("\\s+", " ").strip();
    }
}
