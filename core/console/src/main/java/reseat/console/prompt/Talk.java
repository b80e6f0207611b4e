package reseat.console.prompt;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Processes input from a person or a file: runs code and console commands, and shows the results.
 */
final class Talk {

    /** How a text is run: at a prompt, the user may stop it. */
    interface Runner {
        /** Runs a text to its end; empty if it was abandoned. */
        Optional<Evaluation> run(Session session, Tongue tongue, String text);
    }

    private final Console console;
    private final Runner runner;
    private final Consumer<String> shows;
    private final PrintWriter out;
    private final Words words;
    private Tongue tongue;
    private boolean timing;
    private @Nullable Evaluation last;

    /**
     * Creates an instance.
     *
     * @param console the session and what belongs to it
     * @param tongue the initial language
     * @param runner how to run a text
     * @param shows shows a text that may be long
     * @param out gets short lines
     */
    Talk(Console console, Tongue tongue, Runner runner, Consumer<String> shows, PrintWriter out) {
        this.console = console;
        this.tongue = tongue;
        this.runner = runner;
        this.shows = shows;
        this.out = out;
        this.words = new Words(this, console);
    }

    Tongue tongue() {
        return tongue;
    }

    void speak(Tongue other) {
        tongue = other;
    }

    void timing(boolean on) {
        timing = on;
    }

    void show(String text) {
        shows.accept(text);
    }

    void line(String text) {
        out.println(text);
    }

    /** Returns whether a text is a console command rather than code. */
    boolean isWord(String text) {
        return words.of(text).isPresent();
    }

    /**
     * Processes one text.
     *
     * @param complains reports errors in code
     * @return how it went
     */
    Taken take(String text, Consumer<Evaluation> complains) {
        if (text.isBlank()) {
            return Taken.FINE;
        }
        Optional<Words.Said> said = words.of(text);
        if (said.isPresent()) {
            return words.act(said.get());
        }
        return runCode(tongue, text, complains);
    }

    /** Runs code in a language and shows its value. */
    Taken runCode(Tongue in, String text, Consumer<Evaluation> complains) {
        Optional<Evaluation> ran = runner.run(console.session(), in, text);
        if (ran.isEmpty()) {
            return Taken.GIVEN_UP;
        }
        Evaluation evaluation = ran.get();
        last = evaluation;
        Report report = new Report(console.terminal());
        report.notes(evaluation.outcome().notes(), out);
        switch (evaluation.status()) {
            case OK -> {
                String shown = report.of(evaluation);
                if (!shown.isEmpty()) {
                    shows.accept(shown);
                }
            }
            case STOPPED -> out.println("Stopped. Everything defined before is still there.");
            case FAILED, INCOMPLETE -> complains.accept(evaluation);
        }
        if (timing) {
            out.println(new Ink(console.terminal().colour()).quiet(Report.time(evaluation.took())));
        }
        out.flush();
        return evaluation.isFine() ? Taken.FINE : Taken.WRONG;
    }

    /** The result of a text. */
    enum Taken {
        /** Done. */
        FINE,
        /** It has errors, which were reported. */
        WRONG,
        /** It was abandoned together with the session. */
        GIVEN_UP,
        /** The user wants to leave. */
        LEAVE
    }

    List<Trouble> troubles() {
        return last == null ? List.of() : last.outcome().troubles();
    }
}
