package reseat.console.prompt;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A language of a session. All but {@link #warm}, {@link #interrupt} and {@link #stop} are called
 * from the session's own thread, after {@link #warm} has ended.
 */
interface Language extends AutoCloseable {

    Tongue tongue();

    /**
     * Prepares for running; takes a second or two. Called once, from any thread.
     *
     * @throws LanguageMissing if this Java has no such language
     */
    void warm() throws LanguageMissing;

    /** Returns whether a text is complete. */
    boolean isComplete(String text);

    /** Runs a text. */
    Outcome run(String text);

    /** Interrupts running code. Called from any thread. */
    void interrupt();

    /** Stops running code by all available means. Called from any thread, may take a while. */
    void stop();

    /** Returns completions of a text, the best matches first. */
    List<Offer> offers(String text, int cursor);

    /** Returns the variables whose values other languages can use, by name. */
    Map<String, Object> values();

    /** Returns all names that the user has defined: variables, functions and types. */
    Set<String> names();

    /** Imports a variable of another language. */
    void take(String name, Object value);

    @Override
    void close();

    /** This Java lacks something that the language requires; the message is for users. */
    final class LanguageMissing extends Exception {
        private static final long serialVersionUID = 1L;

        LanguageMissing(String message) {
            super(message);
        }
    }
}
