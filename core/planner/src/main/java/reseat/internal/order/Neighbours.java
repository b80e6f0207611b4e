package reseat.internal.order;

import java.util.Arrays;
import java.util.function.IntPredicate;

/** For every act the acts that may come directly after it and before it, the most likely first. */
final class Neighbours {

    /** Acts that may come directly after. */
    final int[][] followers;

    /** Acts that may come directly before. */
    final int[][] leaders;

    private Neighbours(int[][] followers, int[][] leaders) {
        this.followers = followers;
        this.leaders = leaders;
    }

    /** By cost alone. */
    static Neighbours of(Network net) {
        return new Neighbours(net.heads.clone(), net.tails.clone());
    }

    /** By what a step costs above its prices. */
    static Neighbours of(Assignment assignment) {
        return new Neighbours(assignment.likelyFollowers(), assignment.likelyLeaders());
    }

    /** Drops steps that no better order has, unless an act would have none left. */
    void avoidClosed(StepWindows windows) {
        for (int act = 0; act < followers.length; act++) {
            int at = act;
            followers[act] = open(followers[act], to -> windows.isEverOpen(at, to));
            leaders[act] = open(leaders[act], from -> windows.isEverOpen(from, at));
        }
    }

    private static int[] open(int[] likely, IntPredicate test) {
        int[] kept = Arrays.stream(likely).filter(test).toArray();
        return kept.length == 0 ? likely : kept;
    }
}
