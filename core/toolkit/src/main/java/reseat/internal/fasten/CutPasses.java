package reseat.internal.fasten;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import reseat.fasten.CutPlan;
import reseat.fasten.CutPlan.Pass;
import reseat.fasten.CutPlan.Piece;
import reseat.fasten.CutPlan.Place;
import reseat.fasten.CutPlan.Unsafe;

/**
 * Fewest settings and passes. Settings: the least number of points that stab every interval from
 * least to greatest depth, by the greedy rule that is exact for intervals (sort by the upper end,
 * stab what is not stabbed yet); each point is then moved down to the deepest need of its group,
 * since a shallow cut is the safer one. Passes: dynamic programming round the edge over the
 * settings.
 */
public final class CutPasses {

    private CutPasses() {}

    /** Returns the plan of pieces. */
    public static CutPlan plan(List<Piece> pieces) {
        List<Double> settings = settings(pieces);
        int[] choice = choose(pieces, settings);
        return new CutPlan(pieces, settings, passes(pieces, settings, choice), unsafe(pieces));
    }

    static List<Double> settings(List<Piece> pieces) {
        List<Piece> open =
                pieces.stream()
                        .filter(p -> p.bonded() && p.safe())
                        .sorted(
                                Comparator.comparingDouble(Piece::greatestMm)
                                        .thenComparingDouble(Piece::leastMm))
                        .toList();
        List<Double> settings = new ArrayList<>();
        double stab = Double.NEGATIVE_INFINITY;
        double deepest = 0;
        for (Piece piece : open) {
            if (piece.leastMm() > stab) {
                if (stab > Double.NEGATIVE_INFINITY) {
                    settings.add(deepest);
                }
                stab = piece.greatestMm();
                deepest = piece.leastMm();
            }
            deepest = Math.max(deepest, piece.leastMm());
        }
        if (stab > Double.NEGATIVE_INFINITY) {
            settings.add(deepest);
        }
        return settings.stream().sorted().toList();
    }

    /** Returns for each piece the number of its setting, or -1 where nothing is cut. */
    private static int[] choose(List<Piece> pieces, List<Double> settings) {
        int n = pieces.size();
        int k = settings.size();
        int[] best = new int[n];
        Arrays.fill(best, -1);
        if (k == 0 || n == 0) {
            return best;
        }
        int fewest = Integer.MAX_VALUE;
        // the edge is closed: try every choice for the first piece, 'k' meaning none
        for (int first = 0; first <= k; first++) {
            if (!allowed(pieces.get(0), settings, first)) {
                continue;
            }
            int[] chosen = new int[n];
            int cost = round(pieces, settings, first, chosen);
            if (cost < fewest) {
                fewest = cost;
                best = chosen;
            }
        }
        for (int i = 0; i < n; i++) {
            best[i] = best[i] == k ? -1 : best[i];
        }
        return best;
    }

    /**
     * Finds the fewest starts of passes with a given first choice; a start is a change to another
     * setting.
     */
    private static int round(List<Piece> pieces, List<Double> settings, int first, int[] chosen) {
        int n = pieces.size();
        int k = settings.size();
        int[][] cost = new int[n][k + 1];
        int[][] from = new int[n][k + 1];
        int never = n + 2;
        Arrays.fill(cost[0], never);
        cost[0][first] = 0;
        for (int i = 1; i < n; i++) {
            for (int s = 0; s <= k; s++) {
                cost[i][s] = never;
                for (int before = 0; allowed(pieces.get(i), settings, s) && before <= k; before++) {
                    int total = cost[i - 1][before] + start(before, s, k);
                    if (total < cost[i][s]) {
                        cost[i][s] = total;
                        from[i][s] = before;
                    }
                }
            }
        }
        int end = 0;
        int best = never;
        for (int s = 0; s <= k; s++) {
            int total = cost[n - 1][s] + start(s, first, k);
            if (total < best) {
                best = total;
                end = s;
            }
        }
        for (int i = n - 1; i >= 0; i--) {
            chosen[i] = end;
            end = from[i][end];
        }
        return best;
    }

    private static int start(int before, int now, int nothing) {
        return now != before && now != nothing ? 1 : 0;
    }

    private static boolean allowed(Piece piece, List<Double> settings, int s) {
        if (s == settings.size()) {
            return !piece.bonded() || !piece.safe();
        }
        double depth = settings.get(s);
        return piece.safe() && depth >= piece.leastMm() && depth <= piece.greatestMm();
    }

    private static List<Pass> passes(List<Piece> pieces, List<Double> settings, int[] choice) {
        List<Pass> passes = new ArrayList<>();
        int n = pieces.size();
        int start = 0;
        while (start < n && n > 1 && choice[start] == choice[Math.floorMod(start - 1, n)]) {
            start++;
        }
        start = start == n ? 0 : start;
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            int at = (start + i) % n;
            if (choice[at] >= 0) {
                join(places, pieces.get(at).place());
                boolean last = i == n - 1 || choice[(at + 1) % n] != choice[at];
                if (last) {
                    passes.add(new Pass(settings.get(choice[at]), places));
                    places = new ArrayList<>();
                }
            }
        }
        return passes;
    }

    private static void join(List<Place> places, Place next) {
        @Nullable Place last = places.isEmpty() ? null : places.get(places.size() - 1);
        if (last != null
                && last.edge() == next.edge()
                && Math.abs(last.toMm() - next.fromMm()) < 1e-9) {
            places.set(places.size() - 1, new Place(last.edge(), last.fromMm(), next.toMm()));
        } else {
            places.add(next);
        }
    }

    private static List<Unsafe> unsafe(List<Piece> pieces) {
        List<Unsafe> all = new ArrayList<>();
        for (Piece piece : pieces) {
            if (piece.bonded() && !piece.safe()) {
                @Nullable Unsafe last = all.isEmpty() ? null : all.get(all.size() - 1);
                Place place = piece.place();
                if (last != null
                        && last.place().edge() == place.edge()
                        && last.keepOut().equals(piece.keepOut())
                        && Math.abs(last.place().toMm() - place.fromMm()) < 1e-9) {
                    all.set(
                            all.size() - 1,
                            new Unsafe(
                                    new Place(place.edge(), last.place().fromMm(), place.toMm()),
                                    Math.max(last.neededMm(), piece.leastMm()),
                                    Math.min(last.allowedMm(), piece.greatestMm()),
                                    piece.keepOut()));
                } else {
                    all.add(
                            new Unsafe(
                                    place, piece.leastMm(), piece.greatestMm(), piece.keepOut()));
                }
            }
        }
        return all;
    }
}
