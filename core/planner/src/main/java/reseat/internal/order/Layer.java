package reseat.internal.order;

import java.util.Arrays;

/**
 * The states of one place of the search: the set of acts done and the last of them, each kept with
 * its cheapest part.
 *
 * <p>A hash table finds the state that has the same set and last act. When there are more states
 * than wanted, those with the highest bounds go, and the lowest bound that went is kept: no lost
 * order is cheaper than that.
 */
final class Layer {

    private static final int FIRST_CAPACITY = 1024;

    final int words;
    int count;
    long[] sets;
    long[] cost = new long[FIRST_CAPACITY];
    long[] prices = new long[FIRST_CAPACITY];
    long[] hash = new long[FIRST_CAPACITY];
    int[] parent = new int[FIRST_CAPACITY];
    char[] last = new char[FIRST_CAPACITY];
    private long[] bound = new long[FIRST_CAPACITY];
    private int[] slots = new int[FIRST_CAPACITY * 4];
    private int width;
    private int most;
    private long gate;
    private long lost;

    Layer(int words) {
        this.words = words;
        this.sets = new long[FIRST_CAPACITY * words];
    }

    void clear(int newWidth) {
        width = newWidth;
        most = newWidth + newWidth / 2 + 16;
        count = 0;
        gate = Long.MAX_VALUE;
        lost = Long.MAX_VALUE;
        Arrays.fill(slots, 0);
    }

    /** The lowest bound among the states that were thrown away; {@code MAX_VALUE} when none was. */
    long lost() {
        return lost;
    }

    /** Returns whether a state with this bound would be taken, and counts it as lost if not. */
    boolean admits(long newBound) {
        if (newBound >= gate) {
            lost = Math.min(lost, newBound);
            return false;
        }
        return true;
    }

    /**
     * Adds a state, or a cheaper part to one that is there. The set is that of the parent and the
     * act.
     */
    void add(
            Layer from,
            int parentState,
            int act,
            long actHash,
            long newCost,
            long newPrices,
            long newBound) {
        long newHash = from.hash[parentState] ^ actHash;
        int slot = slotOf(newHash, act);
        while (slots[slot] != 0) {
            int state = slots[slot] - 1;
            if (hash[state] == newHash
                    && last[state] == act
                    && sameSet(state, from, parentState, act)) {
                if (newCost < cost[state]) {
                    cost[state] = newCost;
                    bound[state] = newBound;
                    parent[state] = parentState;
                }
                return;
            }
            slot = (slot + 1) & (slots.length - 1);
        }
        if (count == most) {
            shrink();
            if (!admits(newBound)) {
                return;
            }
            slot = freeSlot(newHash, act);
        } else if (count == cost.length) {
            grow();
            slot = freeSlot(newHash, act);
        }
        System.arraycopy(from.sets, parentState * words, sets, count * words, words);
        sets[count * words + (act >>> 6)] |= 1L << act;
        hash[count] = newHash;
        last[count] = (char) act;
        cost[count] = newCost;
        prices[count] = newPrices;
        bound[count] = newBound;
        parent[count] = parentState;
        slots[slot] = ++count;
    }

    /** Creates the single state of the first place. */
    void addFirst(long allPrices) {
        Arrays.fill(sets, 0, words, 0);
        sets[0] = 1;
        hash[0] = 0;
        last[0] = 0;
        cost[0] = 0;
        prices[0] = allPrices;
        bound[0] = 0;
        parent[0] = -1;
        count = 1;
    }

    /** Throws away what is above the width; the hash table is unusable afterwards. */
    void shrink() {
        if (count <= width) {
            return;
        }
        gate = ranked(Arrays.copyOf(bound, count), width);
        int ties = width; // how many states at the gate itself may stay
        for (int s = 0; s < count; s++) {
            if (bound[s] < gate) {
                ties--;
            }
        }
        int kept = 0;
        for (int s = 0; s < count; s++) {
            if (bound[s] > gate || (bound[s] == gate && ties-- <= 0)) {
                lost = Math.min(lost, bound[s]);
            } else {
                move(s, kept++);
            }
        }
        count = kept;
        rehash();
    }

    /** The value that would stand at the given place if they were sorted (Hoare 1961). */
    private static long ranked(long[] values, int rank) {
        int low = 0;
        int high = values.length - 1;
        while (low < high) {
            long pivot = values[(low + high) >>> 1];
            int left = low;
            int right = high;
            while (left <= right) {
                while (values[left] < pivot) {
                    left++;
                }
                while (values[right] > pivot) {
                    right--;
                }
                if (left <= right) {
                    long value = values[left];
                    values[left++] = values[right];
                    values[right--] = value;
                }
            }
            if (rank <= right) {
                high = right;
            } else if (rank >= left) {
                low = left;
            } else {
                return values[rank];
            }
        }
        return values[rank];
    }

    private void move(int from, int to) {
        System.arraycopy(sets, from * words, sets, to * words, words);
        hash[to] = hash[from];
        last[to] = last[from];
        cost[to] = cost[from];
        prices[to] = prices[from];
        bound[to] = bound[from];
        parent[to] = parent[from];
    }

    private void grow() {
        int capacity = (int) Math.min(most, cost.length * 2L);
        sets = Arrays.copyOf(sets, capacity * words);
        cost = Arrays.copyOf(cost, capacity);
        prices = Arrays.copyOf(prices, capacity);
        hash = Arrays.copyOf(hash, capacity);
        parent = Arrays.copyOf(parent, capacity);
        last = Arrays.copyOf(last, capacity);
        bound = Arrays.copyOf(bound, capacity);
        int size = slots.length;
        while (size < capacity * 2L) {
            size *= 2;
        }
        if (size != slots.length) {
            slots = new int[size];
        }
        rehash();
    }

    private void rehash() {
        Arrays.fill(slots, 0);
        for (int s = 0; s < count; s++) {
            slots[freeSlot(hash[s], last[s])] = s + 1;
        }
    }

    private int freeSlot(long key, int act) {
        int slot = slotOf(key, act);
        while (slots[slot] != 0) {
            slot = (slot + 1) & (slots.length - 1);
        }
        return slot;
    }

    private int slotOf(long key, int act) {
        long mixed = (key + act) * 0x9E3779B97F4A7C15L;
        return (int) (mixed >>> 32) & (slots.length - 1);
    }

    private boolean sameSet(int state, Layer from, int parentState, int act) {
        int mine = state * words;
        int theirs = parentState * words;
        for (int w = 0; w < words; w++) {
            long word = from.sets[theirs + w];
            if (w == (act >>> 6)) {
                word |= 1L << act;
            }
            if (sets[mine + w] != word) {
                return false;
            }
        }
        return true;
    }
}
