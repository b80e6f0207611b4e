package reseat.console.prompt;

import java.util.List;
import java.util.Map;
import java.util.Set;

/** Represents an unavailable language, and reports why it is unavailable. */
final class NoLanguage implements Language {

    private final Tongue tongue;
    private final String why;

    NoLanguage(Tongue tongue, String why) {
        this.tongue = tongue;
        this.why = why;
    }

    @Override
    public Tongue tongue() {
        return tongue;
    }

    @Override
    public void warm() throws LanguageMissing {
        throw new LanguageMissing(why);
    }

    @Override
    public boolean isComplete(String text) {
        return true;
    }

    @Override
    public Outcome run(String text) {
        return Outcome.failed(List.of(Trouble.somewhere(why)));
    }

    @Override
    public void interrupt() {
        // nothing runs
    }

    @Override
    public void stop() {
        // nothing runs
    }

    @Override
    public List<Offer> offers(String text, int cursor) {
        return List.of();
    }

    @Override
    public Map<String, Object> values() {
        return Map.of();
    }

    @Override
    public Set<String> names() {
        return Set.of();
    }

    @Override
    public void take(String name, Object value) {
        // never used again
    }

    @Override
    public void close() {
        // nothing was opened
    }
}
