package reseat.console.prompt;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * One side of the talk with a person or a file: takes texts, runs them or does what a word of the
 * console asks, and shows what comes of it.
 */
final class Talk {

    /** How a text is run: at a prompt, somebody waits beside it who may want it stopped. */
    interface Runner {
        /** Runs a text to its end; empty where it was given up. */
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
     * Makes one.
     *
     * @param console the session and what belongs to it
     * @param tongue the language to begin in
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

    /** Tells whether a text is a word of the console rather than code. */
    boolean isWord(String text) {
        return words.of(text).isPresent();
    }

    /**
     * Takes one text.
     *
     * @param complains shows what is wrong with code
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
            case STOPPED -> out.println("Stopped. Everything made before is still there.");
            case FAILED, INCOMPLETE -> complains.accept(evaluation);
        }
        if (timing) {
            out.println(new Ink(console.terminal().colour()).quiet(Report.time(evaluation.took())));
        }
        out.flush();
        return evaluation.isFine() ? Taken.FINE : Taken.WRONG;
    }

    /** How a text went. */
    enum Taken {
        /** Done. */
        FINE,
        /** Something is wrong with it, and that was said. */
        WRONG,
        /** It was given up, and the session with it. */
        GIVEN_UP,
        /** The person wants to go. */
        LEAVE
    }

    List<Trouble> troubles() {
        return last == null ? List.of() : last.outcome().troubles();
    }
}
