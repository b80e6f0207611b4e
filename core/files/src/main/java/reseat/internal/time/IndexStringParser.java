package reseat.internal.time;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import reseat.internal.time.IndexString.Element;
import reseat.model.Duration;
import reseat.text.ListText;

/** Reads one index string. */
final class IndexStringParser {

    private static final int LONGEST = 400;

    /**
     * A letter with its index, a bare number, a bracket, or anything else between spaces and
     * brackets.
     */
    private static final Pattern TOKEN =
            Pattern.compile("[A-Z]\\s*+[0-9]++(?![.,])|[0-9]++(?![.,])|[()]|[^\\s()]+");

    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern ELEMENT = Pattern.compile("[A-Z]\\s*[0-9]+");
    private static final Pattern NUMBER = Pattern.compile("[0-9]+");
    private static final SequenceModel[] MODELS = SequenceModel.values();

    private final String text;
    private final List<Token> tokens = new ArrayList<>();
    private final List<Element> elements = new ArrayList<>();

    /** Number of the group that contains each element, from 1; 0 outside of brackets. */
    private final List<Integer> groupOf = new ArrayList<>();

    /** Repeats of each group; 0 if the end of the string gives it. */
    private final List<Integer> repeats = new ArrayList<>();

    private String letters = "";
    private int next;

    IndexStringParser(String text) {
        this.text = BLANKS.matcher(text.strip()).replaceAll(" ").toUpperCase(Locale.ROOT);
    }

    IndexString parse() {
        if (text.length() > LONGEST) {
            throw new IndexStringException(
                    "", LONGEST, "an index string has at most " + LONGEST + " characters");
        }
        Matcher matcher = TOKEN.matcher(text);
        while (matcher.find()) {
            tokens.add(new Token(matcher.group(), matcher.start() + 1));
        }
        boolean inGroup = false;
        while (next < tokens.size()) {
            Token token = tokens.get(next);
            if (isRepeats()) {
                takeRepeats(inGroup);
            } else if (token.text.equals("(")) {
                if (inGroup) {
                    throw wrong(token, "brackets do not nest: close the first one before the next");
                }
                inGroup = true;
                repeats.add(0);
                next++;
            } else if (token.text.equals(")")) {
                if (!inGroup
                        || groupOf.isEmpty()
                        || groupOf.get(groupOf.size() - 1) != repeats.size()) {
                    throw wrong(token, "this bracket closes no indices");
                }
                inGroup = false;
                next++;
                if (isRepeats() && next + lengthOfRepeats() < tokens.size()) {
                    repeats.set(repeats.size() - 1, takeNumber());
                }
            } else {
                takeElement(token, inGroup ? repeats.size() : 0);
            }
        }
        if (inGroup) {
            throw atEnd("a bracket is not closed");
        }
        return finish();
    }

    private IndexString finish() {
        for (int group = 1; group <= repeats.size(); group++) {
            if (repeats.get(group - 1) == 0) {
                throw atEnd(
                        "a group in brackets needs the number of its repeats, such as"
                                + " (6), behind it or at the end");
            }
        }
        SequenceModel model =
                Arrays.stream(MODELS)
                        .filter(m -> m.completedBy(letters))
                        .findFirst()
                        .orElseThrow(() -> atEnd("it ends too early: expected " + expected()));
        List<Element> counted = new ArrayList<>();
        long sum = 0;
        for (int i = 0; i < elements.size(); i++) {
            Element element = elements.get(i);
            int times = groupOf.get(i) == 0 ? 1 : repeats.get(groupOf.get(i) - 1);
            counted.add(new Element(element.letter(), element.index(), times));
            sum += (long) element.index() * times;
        }
        if (IndexString.msOf(sum * IndexString.TMU_PER_INDEX) > Duration.MAX_MS) {
            throw atEnd("it adds up to more than a day");
        }
        return new IndexString(text, model, counted, sum);
    }

    private void takeElement(Token token, int group) {
        if (!ELEMENT.matcher(token.text).matches()) {
            throw wrong(token, "this is not a letter with an index: expected " + expected());
        }
        char letter = token.text.charAt(0);
        String digits = token.text.substring(1).strip();
        String with = letters + letter;
        if (!begins(with)) {
            String wanted = expected();
            throw wrong(
                    token,
                    wanted.isEmpty()
                            ? "the sequence is complete before it"
                            : "after " + soFar() + " comes " + wanted);
        }
        letters = with;
        elements.add(new Element(letter, index(token, letter, digits), 1));
        groupOf.add(group);
        next++;
    }

    private static boolean begins(String letters) {
        for (SequenceModel model : MODELS) {
            if (model.begins(letters)) {
                return true;
            }
        }
        return false;
    }

    private static int index(Token token, char letter, String digits) {
        List<Integer> allowed = Card.basic().allowed(letter);
        int given = digits.length() > 6 ? Integer.MAX_VALUE : Integer.parseInt(digits);
        if (allowed.contains(given)) {
            return given;
        }
        int nearest = allowed.get(0);
        for (int each : allowed) {
            if (Math.abs((long) each - given) < Math.abs((long) nearest - given)) {
                nearest = each;
            }
        }
        throw wrong(
                token,
                "the card has no such index; nearest is "
                        + letter
                        + nearest
                        + ", and "
                        + letter
                        + " takes "
                        + allowed.stream().map(String::valueOf).collect(Collectors.joining(", ")));
    }

    /** Returns whether a number of repeats comes next: {@code (6)} or {@code 6}. */
    private boolean isRepeats() {
        return next < tokens.size() && lengthOfRepeats() > 0;
    }

    private int lengthOfRepeats() {
        if (isNumber(next)) {
            return 1;
        }
        boolean bracketed =
                next + 2 < tokens.size()
                        && tokens.get(next).text.equals("(")
                        && isNumber(next + 1)
                        && tokens.get(next + 2).text.equals(")");
        return bracketed ? 3 : 0;
    }

    private boolean isNumber(int at) {
        return at < tokens.size() && NUMBER.matcher(tokens.get(at).text).matches();
    }

    /** Reads the number at the end of the string, which applies to all groups without their own. */
    private void takeRepeats(boolean inGroup) {
        Token token = tokens.get(next);
        if (inGroup || repeats.isEmpty()) {
            throw wrong(token, "a number of repeats must follow indices in brackets");
        }
        if (next + lengthOfRepeats() < tokens.size() || !repeats.contains(0)) {
            throw wrong(
                    token, "a number of repeats must directly follow its group or end the string");
        }
        int times = takeNumber();
        repeats.replaceAll(known -> known == 0 ? times : known);
    }

    private int takeNumber() {
        boolean bracketed = !isNumber(next);
        Token token = tokens.get(bracketed ? next + 1 : next);
        int times = token.text.length() > 6 ? Integer.MAX_VALUE : Integer.parseInt(token.text);
        if (times < 1 || times > IndexString.MAX_REPEATS) {
            throw wrong(token, "repeats must be between 1 and " + IndexString.MAX_REPEATS);
        }
        next += bracketed ? 3 : 1;
        return times;
    }

    /** Returns what may come next, as letters: "A or M". */
    private String expected() {
        return ListText.or(
                Arrays.stream(MODELS)
                        .filter(m -> m.begins(letters))
                        .map(m -> m.expects(letters.length()))
                        .flatMap(some -> some.chars().mapToObj(c -> String.valueOf((char) c)))
                        .distinct()
                        .toList());
    }

    private String soFar() {
        return letters.isEmpty() ? "nothing" : String.join(" ", letters.split(""));
    }

    private IndexStringException atEnd(String what) {
        return new IndexStringException("", text.length() + 1, "\"" + text + "\": " + what);
    }

    private static IndexStringException wrong(Token token, String what) {
        return new IndexStringException(
                token.text,
                token.position,
                "\"" + token.text + "\" at character " + token.position + ": " + what);
    }

    private record Token(String text, int position) {}
}
