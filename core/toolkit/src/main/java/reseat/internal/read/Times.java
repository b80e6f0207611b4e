package reseat.internal.read;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The element times that the reader uses. */
final class Times {

    /** Basic MOST index strings. */
    static final ElementTimes ELEMENTS = new IndexSums();

    private Times() {}

    /** Adds up an index string: every index stands for ten TMU of 36 ms. */
    private static final class IndexSums implements ElementTimes {
        private static final Pattern LOOKS = Pattern.compile("\\(?\\s*[A-Z][0-9]+[\\s(].*");
        private static final Pattern WHOLE = Pattern.compile("[A-Z][0-9]{1,3}(\\s+[A-Z][0-9]{1,3})*");
        private static final Pattern INDEX = Pattern.compile("[A-Z]([0-9]+)");
        private static final long MS_PER_INDEX = 360;

        @Override
        public boolean looksLike(String text) {
            return LOOKS.matcher(text).matches();
        }

        @Override
        public long ms(String text) {
            if (!WHOLE.matcher(text).matches()) {
                throw new IllegalArgumentException("an index string is letters with numbers, such as A1 B0 G1 A1 B0 P3 A0");
            }
            long sum = 0;
            for (Matcher index = INDEX.matcher(text); index.find(); ) {
                sum += Long.parseLong(index.group(1));
            }
            return sum * MS_PER_INDEX;
        }
    }
}
