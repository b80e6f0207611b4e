package reseat.console.prompt;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import reseat.console.load.OurPlugins;
import reseat.console.prompt.Talk.Taken;
import reseat.console.sheet.Terminal;
import reseat.fasten.FastenerTables;
import reseat.script.Bench;
import reseat.script.Screen;
import reseat.script.host.JsEngine;

/** A session with its bench, help and files, independent of how lines are read. */
final class Console implements AutoCloseable {

    private static final int WIDEST = 160;

    private final Path folder;
    private final Places places;
    private volatile Terminal terminal;
    private final PrintStream prints;
    private final List<Tongue> order;
    private final Help help;
    private final CompletableFuture<Bench> bench;
    private Session session;

    /**
     * Opens a console.
     *
     * @param folder the folder that file names are relative to
     * @param places where the user's own files are
     * @param terminal the terminal that texts are formatted for
     * @param first the language that is warmed first
     * @param out gets the output of code
     */
    Console(Path folder, Places places, Terminal terminal, Tongue first, OutputStream out) {
        this.folder = folder;
        this.places = places;
        this.terminal = terminal;
        this.prints = new PrintStream(out, true, StandardCharsets.UTF_8);
        this.order =
                first == Tongue.JS
                        ? List.of(Tongue.JS, Tongue.JAVA)
                        : List.of(Tongue.JAVA, Tongue.JS);
        // tables and plugins take a moment; the prompt does not wait for them
        this.bench = CompletableFuture.supplyAsync(this::newBench, Console::onDaemon);
        this.help = new Help(this);
        this.session = newSession();
    }

    private Bench newBench() {
        return new Bench(folder, OurPlugins.quietly(), FastenerTables.standard(), new Shown());
    }

    private static void onDaemon(Runnable task) {
        Thread thread = new Thread(task, "reseat-console");
        thread.setDaemon(true);
        thread.start();
    }

    private Session newSession() {
        List<Function<Supplier<String>, Language>> makers = new ArrayList<>();
        for (Tongue tongue : order) {
            makers.add(names -> language(tongue, names));
        }
        return new Session(makers);
    }

    private Language language(Tongue tongue, Supplier<String> names) {
        if (tongue == Tongue.JAVA) {
            return new JavaLanguage(this::bench, names, prints);
        }
        // without the engine, the class cannot even be loaded
        return JsEngine.isHere()
                ? new JsLanguage(this::bench, names, prints)
                : new NoLanguage(tongue, JsEngine.missing());
    }

    Session session() {
        return session;
    }

    Bench bench() {
        return bench.join();
    }

    Path folder() {
        return folder;
    }

    Places places() {
        return places;
    }

    Terminal terminal() {
        return terminal;
    }

    /** Adapts the output to a terminal that may have been resized. */
    void fit(int columns) {
        if (columns > 0) {
            terminal = terminal.wide(Math.min(columns, WIDEST));
        }
    }

    Help help() {
        return help;
    }

    /** Starts a new session; code still running in the old one is abandoned. */
    void renew() {
        Session old = session;
        session = newSession();
        old.close();
    }

    /**
     * Runs the start-up files of the shop; errors in them are reported and do not stop the console.
     */
    void startUp(Talk to) {
        for (Tongue tongue : order) {
            Path file = places.startUp(tongue);
            if (Files.isReadable(file)) {
                run(file, tongue, to);
            }
        }
    }

    /** Runs a file in this session. */
    Taken follow(String name, Talk to) {
        String plain = name.replaceAll("^([\"'])(.*)\\1$", "$2");
        Path file = folder.resolve(plain);
        Optional<Tongue> tongue =
                List.of(Tongue.values()).stream()
                        .filter(each -> plain.endsWith(each.suffix()))
                        .findFirst();
        if (!Files.isReadable(file)) {
            to.line("There is no file " + plain + ".");
            return Taken.WRONG;
        }
        return run(file, tongue.orElse(to.tongue()), to);
    }

    private Taken run(Path file, Tongue tongue, Talk to) {
        try {
            String text = Files.readString(file, StandardCharsets.UTF_8);
            return to.runCode(
                    tongue, text, evaluation -> complain(file.toString(), evaluation, to));
        } catch (IOException e) {
            to.line("Cannot read " + file + ".");
            return Taken.WRONG;
        }
    }

    /** Saves the session as a file. */
    Taken keep(String what, Talk to) {
        return new Keep(this, to).keep(what);
    }

    /** Reports the errors of an input of this session. */
    void complain(Evaluation evaluation, Talk to) {
        complain("input " + evaluation.input(), evaluation, to);
    }

    private void complain(String file, Evaluation evaluation, Talk to) {
        Pointing pointing = new Pointing(terminal, 0);
        if (evaluation.status() == Outcome.Status.INCOMPLETE) {
            to.line(file + ": the code ends before it is complete.");
        }
        evaluation
                .outcome()
                .troubles()
                .forEach(trouble -> to.line(pointing.told(file, evaluation.text(), trouble)));
    }

    @Override
    public void close() {
        session.close();
    }

    /** Output of code goes where the console's output goes. */
    private final class Shown implements Screen {
        @Override
        public void show(@Nullable Object thing) {
            String text = thing instanceof String words ? words : new View(terminal).of(thing);
            prints.println(text);
        }

        @Override
        public void note(String line) {
            prints.println(new Ink(terminal.colour()).quiet(line));
        }

        @Override
        public void explain(@Nullable Object thing) {
            prints.println(help.of(thing));
        }
    }
}
