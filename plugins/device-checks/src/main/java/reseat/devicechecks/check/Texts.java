package reseat.devicechecks.check;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Recognises what a text of a device is about by the words in it. English, with the words for a
 * cell in a few other languages. What a text denies ("not metal", "without fire") does not count.
 */
final class Texts {

    /** Speaks of an energy store that can burn. */
    static final Pattern CELL =
            word(
                    "cells?",
                    "batter(?:y|ies)",
                    "batteri[jec]\\w*",
                    "lithium",
                    "li-?ion",
                    "li-?po",
                    "accumulators?",
                    "accus?",
                    "akkus?",
                    "electrolytes?",
                    "energy stores?",
                    "power packs?",
                    "supercap\\w*");

    /** Speaks of a magnet or of whom it harms. */
    static final Pattern MAGNET = word("\\w*magnet\\w*", "pacemakers?", "implants?");

    private static final Pattern DENIED =
            Pattern.compile("\\b(?:no|not|never|nothing|without|cannot|can't|nor)\\b[^.;,:]*");

    private Texts() {}

    /** Returns a pattern that finds any of some words, each an expression. */
    static Pattern word(String... words) {
        return Pattern.compile("\\b(?:" + String.join("|", words) + ")\\b");
    }

    /** Returns whether a text says something, and does not deny it. */
    static boolean says(Pattern what, String text) {
        return what.matcher(DENIED.matcher(lower(text)).replaceAll(" ")).find();
    }

    /** Returns whether a name contains a word. */
    static boolean names(Pattern what, String name) {
        return what.matcher(lower(name).replace('-', ' ').replace('_', ' ')).find();
    }

    /** Returns a text in lower case. */
    static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}
