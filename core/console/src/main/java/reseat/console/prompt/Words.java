package reseat.console.prompt;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import reseat.console.prompt.Language.LanguageMissing;
import reseat.console.prompt.Talk.Taken;

/** The console commands: plain words, each on a line of its own. */
final class Words {

    /** A word, and what may follow it. */
    enum Word {
        JS("", "switch to JavaScript", false),
        JAVA("", "switch to Java", false),
        HELP("[NAME]", "overview, or help on a function, type, member, check or name", false),
        NAMES("", "list the names you defined, in both languages", false),
        TYPED("[TEXT]", "list the input of this session, with its numbers", false),
        AGAIN("NUMBER", "run the input with this number again", true),
        FOLLOW("FILE", "run a file of code in this session", true),
        KEEP(
                "FILE | check NAME",
                "save this session as a script, or as a check with its device",
                true),
        TIMING("on | off", "show how long each input takes", true),
        CALLS("", "show the stack trace of the last error", false),
        FRESH("", "start a new session without your definitions", false),
        LEAVE("", "exit the console", false);

        private final String takes;
        private final String does;
        private final boolean needs;

        Word(String takes, String does, boolean needs) {
            this.takes = takes;
            this.does = does;
            this.needs = needs;
        }

        String text() {
            return name().toLowerCase(Locale.ROOT);
        }

        String usage() {
            return text() + (takes.isEmpty() ? "" : " " + takes);
        }

        String does() {
            return does;
        }
    }

    /**
     * A word with what followed it.
     *
     * @param rest what followed; may be empty
     */
    record Said(Word word, String rest) {}

    /** The form of a command's argument, which code never has. */
    private static final Pattern REST = Pattern.compile("[\\w./~\"'$-][^=;{}()]*");

    private final Talk talk;
    private final Console console;

    Words(Talk talk, Console console) {
        this.talk = talk;
        this.console = console;
    }

    /** Returns the command in a text; empty if it is code. */
    Optional<Said> of(String text) {
        String line = text.strip();
        int blank = line.indexOf(' ');
        String first = blank < 0 ? line : line.substring(0, blank);
        String rest = blank < 0 ? "" : line.substring(blank).strip();
        if (line.contains("\n") || (!rest.isEmpty() && !REST.matcher(rest).matches())) {
            return Optional.empty();
        }
        return Arrays.stream(Word.values())
                .filter(word -> word.text().equals(first))
                .filter(word -> rest.isEmpty() || !word.takes.isEmpty())
                .filter(word -> !console.session().isVariable(first))
                .map(word -> new Said(word, rest))
                .findFirst();
    }

    /** Runs a command. */
    Taken act(Said said) {
        if (said.word.needs && said.rest.isEmpty()) {
            talk.line(said.word.text() + " needs an argument: " + said.word.usage());
            return Taken.WRONG;
        }
        return switch (said.word) {
            case JS -> speak(Tongue.JS);
            case JAVA -> speak(Tongue.JAVA);
            case HELP -> help(said.rest);
            case NAMES -> names();
            case TYPED -> typed(said.rest);
            case AGAIN -> again(said.rest);
            case FOLLOW -> console.follow(said.rest, talk);
            case KEEP -> console.keep(said.rest, talk);
            case TIMING -> timing(said.rest);
            case CALLS -> calls();
            case FRESH -> fresh();
            case LEAVE -> Taken.LEAVE;
        };
    }

    private Taken speak(Tongue tongue) {
        try {
            console.session().check(tongue);
        } catch (LanguageMissing e) {
            talk.line(String.valueOf(e.getMessage()));
            return Taken.WRONG;
        }
        talk.speak(tongue);
        return Taken.FINE;
    }

    private Taken help(String name) {
        talk.show(name.isEmpty() ? console.help().overview() : console.help().of(name));
        return Taken.FINE;
    }

    private Taken names() {
        Map<String, Object> values = console.session().values();
        talk.show(console.help().names(values));
        return Taken.FINE;
    }

    private Taken typed(String text) {
        List<String> lines =
                console.session().history().stream()
                        .filter(each -> each.text().contains(text))
                        .map(Words::line)
                        .toList();
        talk.show(lines.isEmpty() ? "Nothing yet." : String.join("\n", lines));
        return Taken.FINE;
    }

    private static String line(Evaluation each) {
        String lead = String.format(Locale.ROOT, "%4d  %-4s  ", each.input(), each.tongue().word());
        String mark =
                each.isFine() ? "" : "   (" + each.status().name().toLowerCase(Locale.ROOT) + ")";
        return lead + each.text().replace("\n", "\n" + " ".repeat(lead.length())) + mark;
    }

    private Taken again(String number) {
        Optional<Evaluation> wanted =
                console.session().history().stream()
                        .filter(each -> Integer.toString(each.input()).equals(number))
                        .findFirst();
        if (wanted.isEmpty()) {
            talk.line("No input has the number " + number + "; \"typed\" shows the numbers.");
            return Taken.WRONG;
        }
        talk.line(wanted.get().text());
        return talk.runCode(
                wanted.get().tongue(), wanted.get().text(), e -> console.complain(e, talk));
    }

    private Taken timing(String how) {
        if (!how.equals("on") && !how.equals("off")) {
            talk.line("timing is on or off.");
            return Taken.WRONG;
        }
        talk.timing(how.equals("on"));
        return Taken.FINE;
    }

    private Taken calls() {
        List<String> details =
                talk.troubles().stream().flatMap(trouble -> trouble.details().stream()).toList();
        talk.show(
                details.isEmpty() ? "The last input caused no error." : String.join("\n", details));
        return Taken.FINE;
    }

    private Taken fresh() {
        console.renew();
        talk.line("New session started; earlier input is still in the history.");
        return Taken.FINE;
    }

    /** Returns all commands with their descriptions, for the help. */
    static List<Word> all() {
        return Arrays.stream(Word.values()).sorted(Comparator.comparing(Word::ordinal)).toList();
    }
}
