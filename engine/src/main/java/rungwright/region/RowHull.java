package rungwright.region;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Whether totals cannot be had together, whatever rows there are: the amounts of rows lie in a hull, those of
 * so many rows in so many times the hull, and a straight line keeps that apart from what is wanted.
 *
 * <p>With loads up to 200 kg, 20 reps in all cannot make 6,000 kg: 200 times the reps is never under the
 * kilograms.
 */
final class RowHull {
    private final List<RowStep> steps;
    private final List<Reach> wanted;
    private final BigInteger rows;

    RowHull(List<RowStep> steps, List<Reach> wanted, int rows) {
        this.steps = steps;
        this.wanted = wanted;
        this.rows = BigInteger.valueOf(rows);
    }

    private record Point(BigInteger x, BigInteger y) {
        /** The normal that points to the right of the way from here to {@code other}. */
        Point normal(Point other) {
            return new Point(other.y.subtract(y), x.subtract(other.x));
        }

        BigInteger dot(Point other) {
            return x.multiply(other.x).add(y.multiply(other.y));
        }
    }

    boolean isApart() {
        for (int one = 0; one < wanted.size(); one++) {
            for (int other = 0; other < one; other++) {
                if (isApart(one, other)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean isApart(int first, int second) {
        List<Point> hull = hull(first, second);
        for (int i = 0; i < hull.size(); i++) {
            Point from = hull.get(i);
            Point normal = from.normal(hull.get((i + 1) % hull.size()));
            BigInteger farthest = normal.dot(from).multiply(rows);
            Optional<BigInteger> nearest = nearest(normal.x(), wanted.get(first))
                    .flatMap(x -> nearest(normal.y(), wanted.get(second)).map(x::add));
            if (nearest.isPresent() && nearest.get().compareTo(farthest) > 0) {
                return true;
            }
        }
        return false;
    }

    /** The least that {@code factor} times a wanted number can be; nothing where there is no least. */
    private static Optional<BigInteger> nearest(BigInteger factor, Reach reach) {
        return switch (factor.signum()) {
            case 0 -> Optional.of(BigInteger.ZERO);
            case 1 -> reach.least().map(factor::multiply);
            default -> reach.most().map(factor::multiply);
        };
    }

    /** The corners of the least convex polygon around all amounts and nought, anticlockwise. */
    private List<Point> hull(int first, int second) {
        // At each x the ends are enough, and no other point of it is a corner.
        Map<Long, long[]> ends = new TreeMap<>(Map.of(0L, new long[] {0, 0}));
        for (RowStep step : steps) {
            long y = step.amount(second);
            long[] range = ends.computeIfAbsent(step.amount(first), any -> new long[] {y, y});
            range[0] = Math.min(range[0], y);
            range[1] = Math.max(range[1], y);
        }
        List<Point> points = new ArrayList<>();
        ends.forEach((x, range) -> {
            for (long y : range) {
                points.add(new Point(BigInteger.valueOf(x), BigInteger.valueOf(y)));
            }
        });
        List<Point> lower = chain(points);
        Collections.reverse(points);
        lower.addAll(chain(points));
        return lower;
    }

    /** One side of the hull without its last corner. */
    private static List<Point> chain(List<Point> points) {
        List<Point> chain = new ArrayList<>();
        for (Point point : points) {
            while (chain.size() >= 2 && !turnsLeft(chain, point)) {
                chain.remove(chain.size() - 1);
            }
            chain.add(point);
        }
        chain.remove(chain.size() - 1);
        return chain;
    }

    private static boolean turnsLeft(List<Point> chain, Point next) {
        Point from = chain.get(chain.size() - 2);
        Point via = chain.get(chain.size() - 1);
        Point right = from.normal(via);
        return right.dot(next).compareTo(right.dot(via)) < 0;
    }
}
