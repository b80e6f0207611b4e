package reseat.console.prompt;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.Optional;
import reseat.console.prompt.Talk.Taken;

/** Runs input from a pipe or an option: no prompt, no history, and the first error stops it. */
final class Piped {

    private static final int WRONG = 2;

    private final Console console;
    private final Talk talk;
    private final PrintWriter err;

    Piped(Console console, Tongue tongue, PrintWriter out, PrintWriter err) {
        this.console = console;
        this.err = err;
        this.talk = new Talk(console, tongue, Piped::run, out::println, out);
    }

    Talk talk() {
        return talk;
    }

    private static Optional<Evaluation> run(Session session, Tongue tongue, String text) {
        return Optional.of(session.evaluate(tongue, text).join());
    }

    /** Runs one text. */
    int take(String name, String text) {
        Taken taken = talk.take(text, evaluation -> complain(name, 0, evaluation));
        return taken == Taken.WRONG || taken == Taken.GIVEN_UP ? WRONG : 0;
    }

    /** Runs texts as they arrive, each as soon as it is complete. */
    int takeAll(String name, BufferedReader in) throws IOException {
        StringBuilder text = new StringBuilder();
        int line = 0;
        int first = 0;
        for (String read = in.readLine(); read != null; read = in.readLine()) {
            text.append(text.isEmpty() ? "" : "\n").append(read);
            line++;
            if (!isComplete(text.toString())) {
                continue;
            }
            int skipped = first;
            Taken taken = talk.take(text.toString(), e -> complain(name, skipped, e));
            if (taken != Taken.FINE) {
                return taken == Taken.LEAVE ? 0 : WRONG;
            }
            text.setLength(0);
            first = line;
        }
        if (text.toString().isBlank()) {
            return 0;
        }
        int skipped = first;
        Taken taken = talk.take(text.toString(), e -> complain(name, skipped, e));
        return taken == Taken.FINE || taken == Taken.LEAVE ? 0 : WRONG;
    }

    private boolean isComplete(String text) {
        if (talk.isWord(text) || text.isBlank()) {
            return true;
        }
        try {
            console.session().awaitWarm(talk.tongue());
        } catch (Language.LanguageMissing e) {
            return true; // reported when it is run
        }
        return console.session().isComplete(talk.tongue(), text);
    }

    private void complain(String name, int linesBefore, Evaluation evaluation) {
        // the lines before count, so that the location is in the whole input
        String text = "\n".repeat(linesBefore) + evaluation.text();
        Pointing pointing = new Pointing(console.terminal(), 0);
        if (evaluation.status() == Outcome.Status.INCOMPLETE) {
            err.println(name + ": the code ends before it is complete.");
        }
        for (Trouble trouble : evaluation.outcome().troubles()) {
            err.println(pointing.told(name, text, trouble.shifted(linesBefore)));
        }
        err.flush();
    }
}
