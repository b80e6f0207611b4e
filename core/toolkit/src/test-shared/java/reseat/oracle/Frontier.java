package reseat.oracle;

import java.util.Arrays;

/**
 * The open states of Dijkstra's search: an open-addressing table of states and a binary heap of
 * slots in it.
 */
final class Frontier {

    private int capacity = 1 << 12;
    private int[] table = filled(capacity);
    private long[] states = new long[capacity / 2];
    private long[] best = new long[capacity / 2];
    private int[] parents = new int[capacity / 2];
    private boolean[] closed = new boolean[capacity / 2];
    private int size;
    private long[] heapMs = new long[1 << 12];
    private int[] heapSlot = new int[1 << 12];
    private int heap;
    private int current;

    private static int[] filled(int length) {
        int[] empty = new int[length];
        Arrays.fill(empty, -1);
        return empty;
    }

    /** Offers a way to a state; keeps it if it is cheaper than all before. */
    void offer(long state, long ms, int parent) {
        int slot = slotOf(state);
        if (ms < best[slot]) {
            best[slot] = ms;
            parents[slot] = parent;
            push(ms, slot);
        }
    }

    /** Takes the cheapest open state; returns false if none is left. */
    boolean pollNext() {
        while (heap > 0) {
            int slot = pop();
            if (!closed[slot]) {
                closed[slot] = true;
                current = slot;
                return true;
            }
        }
        return false;
    }

    int slot() {
        return current;
    }

    long state() {
        return states[current];
    }

    long ms() {
        return best[current];
    }

    int parent(int slot) {
        return parents[slot];
    }

    long stateAt(int slot) {
        return states[slot];
    }

    long msAt(int slot) {
        return best[slot];
    }

    private int slotOf(long state) {
        int at = hash(state);
        while (table[at] >= 0) {
            if (states[table[at]] == state) {
                return table[at];
            }
            at = at + 1 & capacity - 1;
        }
        if (size == states.length) {
            grow();
            return slotOf(state);
        }
        table[at] = size;
        states[size] = state;
        best[size] = Long.MAX_VALUE;
        return size++;
    }

    private int hash(long state) {
        long mixed = state * 0x9E3779B97F4A7C15L;
        return (int) (mixed >>> 40) & capacity - 1;
    }

    private void grow() {
        capacity *= 2;
        table = filled(capacity);
        states = Arrays.copyOf(states, capacity / 2);
        best = Arrays.copyOf(best, capacity / 2);
        parents = Arrays.copyOf(parents, capacity / 2);
        closed = Arrays.copyOf(closed, capacity / 2);
        for (int slot = 0; slot < size; slot++) {
            int at = hash(states[slot]);
            while (table[at] >= 0) {
                at = at + 1 & capacity - 1;
            }
            table[at] = slot;
        }
    }

    private void push(long ms, int slot) {
        if (heap == heapMs.length) {
            heapMs = Arrays.copyOf(heapMs, heap * 2);
            heapSlot = Arrays.copyOf(heapSlot, heap * 2);
        }
        int at = heap++;
        while (at > 0 && heapMs[at - 1 >> 1] > ms) {
            heapMs[at] = heapMs[at - 1 >> 1];
            heapSlot[at] = heapSlot[at - 1 >> 1];
            at = at - 1 >> 1;
        }
        heapMs[at] = ms;
        heapSlot[at] = slot;
    }

    private int pop() {
        int top = heapSlot[0];
        long ms = heapMs[--heap];
        int slot = heapSlot[heap];
        int at = 0;
        for (int child = 1; child < heap; child = 2 * at + 1) {
            if (child + 1 < heap && heapMs[child + 1] < heapMs[child]) {
                child++;
            }
            if (heapMs[child] >= ms) {
                break;
            }
            heapMs[at] = heapMs[child];
            heapSlot[at] = heapSlot[child];
            at = child;
        }
        heapMs[at] = ms;
        heapSlot[at] = slot;
        return top;
    }
}
