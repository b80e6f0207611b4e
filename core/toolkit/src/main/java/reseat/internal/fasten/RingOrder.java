package reseat.internal.fasten;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import reseat.fasten.TighteningPattern.Shape;
import reseat.model.Point;

/**
 * Seats divided into rings, one within the other (the layers of the convex hull), each numbered
 * counter-clockwise.
 *
 * @param shape how the seats lie
 * @param rings indices of the seats, innermost ring first, each in order round it
 */
public record RingOrder(Shape shape, List<List<Integer>> rings) {

    /** Seats this near to a line lie on it, as a share of the extent: drawings are never exact. */
    private static final double FLAT = 0.02;

    /** Divides seats into rings. */
    public static RingOrder of(List<Point> seats) {
        if (seats.size() == 1) {
            return new RingOrder(Shape.SINGLE, List.of(List.of(0)));
        }
        double tolerance = FLAT * extent(seats);
        List<Integer> open = new ArrayList<>();
        for (int i = 0; i < seats.size(); i++) {
            open.add(i);
        }
        if (inLine(seats, open, tolerance)) {
            return new RingOrder(Shape.ROW, List.of(alongLine(seats, open)));
        }
        List<List<Integer>> rings = new ArrayList<>();
        while (!open.isEmpty()) {
            List<Integer> ring =
                    open.size() < 3 || inLine(seats, open, tolerance)
                            ? alongLine(seats, open)
                            : fromFirst(layer(seats, open, tolerance));
            rings.add(0, ring);
            open.removeAll(ring);
        }
        return new RingOrder(rings.size() == 1 ? Shape.RING : Shape.FIELD, rings);
    }

    /** Returns the order of tightening. */
    public List<Integer> crissCross() {
        List<Integer> order = new ArrayList<>();
        for (int r = 0; r < rings.size(); r++) {
            List<Integer> ring = rings.get(r);
            boolean row = shape == Shape.ROW || (r == 0 && shape == Shape.FIELD && ring.size() < 3);
            for (int place : row ? middleOut(ring.size()) : crissCross(ring.size())) {
                order.add(ring.get(place));
            }
        }
        return order;
    }

    /** Returns the seats as they lie, ring after ring. */
    public List<Integer> round() {
        return rings.stream().flatMap(List::stream).toList();
    }

    /** See {@code TighteningPattern.crissCross}. */
    public static List<Integer> crissCross(int n) {
        if (n < 1) {
            throw new IllegalArgumentException("a ring must have at least one place: " + n);
        }
        List<Integer> order = new ArrayList<>();
        if (n % 2 == 1) {
            int step = Math.max(1, (n - 1) / 2);
            for (int i = 0; i < n; i++) {
                order.add((int) ((long) i * step % n));
            }
        } else {
            for (int place : crissCross(n / 2)) {
                order.add(place);
                order.add(place + n / 2);
            }
        }
        return List.copyOf(order);
    }

    private static List<Integer> middleOut(int n) {
        List<Integer> order = new ArrayList<>();
        int low = (n - 1) / 2;
        int high = low + 1;
        while (low >= 0 || high < n) {
            if (low >= 0) {
                order.add(low--);
            }
            if (high < n) {
                order.add(high++);
            }
        }
        return order;
    }

    private static double extent(List<Point> seats) {
        double most = 0;
        for (Point a : seats) {
            for (Point b : seats) {
                most = Math.max(most, a.distanceMm(b));
            }
        }
        return most;
    }

    private static boolean inLine(List<Point> seats, List<Integer> open, double tolerance) {
        int[] ends = ends(seats, open);
        return open.stream()
                .allMatch(
                        i ->
                                offLine(seats.get(ends[0]), seats.get(ends[1]), seats.get(i))
                                        <= tolerance);
    }

    private static int[] ends(List<Point> seats, List<Integer> open) {
        int[] ends = {open.get(0), open.get(0)};
        double most = -1;
        for (int i : open) {
            for (int j : open) {
                double distance = seats.get(i).distanceMm(seats.get(j));
                if (i <= j && distance > most) {
                    most = distance;
                    ends[0] = i;
                    ends[1] = j;
                }
            }
        }
        return ends;
    }

    private static List<Integer> alongLine(List<Point> seats, List<Integer> open) {
        Point from = seats.get(ends(seats, open)[0]);
        return open.stream()
                .sorted(
                        Comparator.<Integer>comparingDouble(i -> seats.get(i).distanceMm(from))
                                .thenComparing(Comparator.naturalOrder()))
                .toList();
    }

    /** Returns the seats on or near the convex hull of those open, counter-clockwise. */
    private static List<Integer> layer(List<Point> seats, List<Integer> open, double tolerance) {
        List<Integer> corners = hull(seats, open);
        TreeMap<Double, List<Integer>> byPlace = new TreeMap<>();
        for (int i : open) {
            double place = placeOnHull(seats, corners, seats.get(i), tolerance);
            if (place >= 0) {
                byPlace.computeIfAbsent(place, x -> new ArrayList<>()).add(i);
            }
        }
        return byPlace.values().stream().flatMap(List::stream).toList();
    }

    /** Returns side number plus share of the side where a point lies near the hull, or -1. */
    private static double placeOnHull(
            List<Point> seats, List<Integer> corners, Point point, double tolerance) {
        double best = Double.POSITIVE_INFINITY;
        double place = -1;
        for (int side = 0; side < corners.size(); side++) {
            Point a = seats.get(corners.get(side));
            Point b = seats.get(corners.get((side + 1) % corners.size()));
            double length = a.distanceMm(b);
            double along = dot(a, b, point) / (length * length);
            double off = offLine(a, b, point);
            if (along >= 0 && along < 1 && off <= tolerance && off < best) {
                best = off;
                place = side + along;
            }
        }
        return place;
    }

    private static List<Integer> hull(List<Point> seats, List<Integer> open) {
        List<Integer> sorted =
                open.stream()
                        .sorted(
                                Comparator.<Integer>comparingDouble(i -> seats.get(i).xMm())
                                        .thenComparingDouble(i -> seats.get(i).yMm()))
                        .toList();
        List<Integer> lower = chain(seats, sorted);
        List<Integer> backwards = new ArrayList<>(sorted);
        Collections.reverse(backwards);
        List<Integer> upper = chain(seats, backwards);
        List<Integer> all = new ArrayList<>(lower.subList(0, lower.size() - 1));
        all.addAll(upper.subList(0, upper.size() - 1));
        return all;
    }

    private static List<Integer> chain(List<Point> seats, List<Integer> sorted) {
        List<Integer> chain = new ArrayList<>();
        for (int i : sorted) {
            while (chain.size() >= 2
                    && cross(
                                    seats.get(chain.get(chain.size() - 2)),
                                    seats.get(chain.get(chain.size() - 1)),
                                    seats.get(i))
                            <= 0) {
                chain.remove(chain.size() - 1);
            }
            chain.add(i);
        }
        return chain;
    }

    private static List<Integer> fromFirst(List<Integer> ring) {
        int first = ring.indexOf(Collections.min(ring));
        List<Integer> turned = new ArrayList<>(ring.subList(first, ring.size()));
        turned.addAll(ring.subList(0, first));
        return turned;
    }

    private static double offLine(Point a, Point b, Point c) {
        double length = a.distanceMm(b);
        return length == 0 ? a.distanceMm(c) : Math.abs(cross(a, b, c)) / length;
    }

    private static double dot(Point a, Point b, Point c) {
        return (b.xMm() - a.xMm()) * (c.xMm() - a.xMm())
                + (b.yMm() - a.yMm()) * (c.yMm() - a.yMm());
    }

    private static double cross(Point a, Point b, Point c) {
        return (b.xMm() - a.xMm()) * (c.yMm() - a.yMm())
                - (b.yMm() - a.yMm()) * (c.xMm() - a.xMm());
    }
}
