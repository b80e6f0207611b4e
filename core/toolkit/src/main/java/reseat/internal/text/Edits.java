package reseat.internal.text;

/** The edit distance of two words. */
public final class Edits {

    private Edits() {}

    /**
     * Returns the edit distance with swaps of neighbours (optimal string alignment): the least
     * number of letters put in, left out, changed or swapped with the next that turns one word into
     * the other.
     */
    public static int between(String a, String b) {
        int[] beforeLast = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        int[] row = new int[b.length() + 1];
        for (int k = 0; k <= b.length(); k++) {
            last[k] = k;
        }
        for (int i = 1; i <= a.length(); i++) {
            row[0] = i;
            for (int k = 1; k <= b.length(); k++) {
                int same = a.charAt(i - 1) == b.charAt(k - 1) ? 0 : 1;
                row[k] = Math.min(Math.min(last[k] + 1, row[k - 1] + 1), last[k - 1] + same);
                if (i > 1
                        && k > 1
                        && a.charAt(i - 1) == b.charAt(k - 2)
                        && a.charAt(i - 2) == b.charAt(k - 1)) {
                    row[k] = Math.min(row[k], beforeLast[k - 2] + 1);
                }
            }
            int[] spare = beforeLast;
            beforeLast = last;
            last = row;
            row = spare;
        }
        return last[b.length()];
    }
}
