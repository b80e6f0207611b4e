package reseat.console.prompt;

import java.time.Duration;

/**
 * One input and its outcome. Immutable as far as its value is.
 *
 * @param input its number in the session, from 1
 * @param tongue the language it is in
 * @param outcome what came of it
 * @param took how long that took
 */
record Evaluation(int input, Tongue tongue, String text, Outcome outcome, Duration took) {

    Outcome.Status status() {
        return outcome.status();
    }

    boolean isFine() {
        return outcome.status() == Outcome.Status.OK;
    }
}
