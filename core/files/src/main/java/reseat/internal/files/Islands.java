package reseat.internal.files;

/** Groups of parts that hang together by joints when the base is taken away. */
final class Islands {

    private Islands() {}

    /**
     * Returns for each part the first part of its group.
     *
     * @param parts how many parts there are
     * @param base the base
     * @param holds for each joint the parts that it holds
     */
    static int[] of(int parts, int base, int[][] holds) {
        int[] group = new int[parts];
        for (int p = 0; p < parts; p++) {
            group[p] = p;
        }
        for (int[] together : holds) {
            int first = -1;
            for (int p : together) {
                if (p != base) {
                    int own = first(group, p);
                    int other = first < 0 ? own : first;
                    first = Math.min(own, other);
                    group[Math.max(own, other)] = first;
                }
            }
        }
        for (int p = 0; p < parts; p++) {
            group[p] = first(group, p);
        }
        return group;
    }

    private static int first(int[] group, int part) {
        int at = part;
        while (group[at] != at) {
            at = group[at];
        }
        return at;
    }
}
