package reseat.internal.graph;

/** Which parts hang on which, so that one move could take them. */
final class Hanging {

    private final Compiled c;
    private final Footing at;
    private final long[][] go;

    Hanging(Compiled c, Footing at, long[][] go) {
        this.c = c;
        this.at = at;
        this.go = go;
    }

    /**
     * Returns the parts that a move of a part could take along at most.
     *
     * @param without a part that stays, or -1
     */
    boolean[] on(int part, int without) {
        boolean[] near = new boolean[c.parts];
        int[] queue = new int[c.parts];
        int end = 0;
        queue[end++] = part;
        near[part] = true;
        for (int k = 0; k < end; k++) {
            int x = queue[k];
            for (int j : c.nodesOf[x]) {
                if (at.isReleased(j) || Bits.get(go[x], j) || Bits.get(go[part], j)) {
                    continue;
                }
                for (int y : c.holds[j]) {
                    if (!near[y]
                            && y != without
                            && !at.pinned[y]
                            && c.partClass[y] == c.partClass[part]
                            && !Bits.get(go[y], j)) {
                        near[y] = true;
                        queue[end++] = y;
                    }
                }
            }
        }
        return near;
    }
}
