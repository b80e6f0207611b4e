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
     * Gets ready to run; takes a second or two. Called once, from any thread.
     *
     * @throws LanguageMissing if this Java has no such language
     */
    void warm() throws LanguageMissing;

    /** Tells whether a text can be run as it stands. */
    boolean isComplete(String text);

    /** Runs a text. */
    Outcome run(String text);

    /** Asks what runs to end, gently. Called from any thread. */
    void interrupt();

    /** Ends what runs by all means that there are. Called from any thread, may take a while. */
    void stop();

    /** Returns ways to go on with a text, those that fit first. */
    List<Offer> offers(String text, int cursor);

    /** Returns the variables that have a value which other languages can use, by name. */
    Map<String, Object> values();

    /** Returns all names that the user has made: variables, functions and types. */
    Set<String> names();

    /** Takes over a variable of another language. */
    void take(String name, Object value);

    @Override
    void close();

    /** This Java lacks what the language needs; the message says what, for people. */
    final class LanguageMissing extends Exception {
        private static final long serialVersionUID = 1L;

        LanguageMissing(String message) {
            super(message);
        }
    }
}
