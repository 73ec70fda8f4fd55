package rungwright.region;

import java.lang.management.ManagementFactory;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * How much processor time the searches take, cold and warm; a main program, not a test, since figures differ
 * from machine to machine.
 */
final class SearchSpeed {
    private static final System.Logger LOG = System.getLogger("speed");
    private static final int ROUNDS = 40;
    private static final long PATIENCE = 4_000_000_000L;

    private SearchSpeed() { }

    /** A question with its name, and what of it is asked. */
    private record Question(String name, Box whole, List<Box> boxes) {
        String gaps(Budget budget) {
            Gaps gaps = GapSearch.find(whole, boxes, Possible.ALWAYS, 20, budget);
            return gaps.gaps().size() + " gaps, missing 2^" + gaps.missing().bitLength()
                    + (gaps.finished() && gaps.counted() ? "" : ", not finished");
        }

        String overlaps(Budget budget) {
            List<List<Box>> rules = boxes.stream().map(List::of).toList();
            Overlaps overlaps = OverlapSearch.find(rules, Possible.ALWAYS, 1_000, budget);
            return overlaps.overlaps().size() + " overlaps" + (overlaps.finished() ? "" : ", not finished");
        }
    }

    private interface Search {
        String run(Budget budget);
    }

    /** Measures all questions, or those whose name begins with the first argument. */
    public static void main(String[] arguments) {
        String wanted = arguments.length == 0 ? "" : arguments[0];
        for (Question question : questions()) {
            if (question.name().startsWith(wanted)) {
                measure(question.name() + " gaps", question::gaps);
                measure(question.name() + " overlaps", question::overlaps);
            }
        }
    }

    private static void measure(String name, Search search) {
        long first = 0;
        long best = Long.MAX_VALUE;
        long spent = 0;
        String outcome = "";
        Budget budget = Budget.of(0);
        for (int round = 0; round < ROUNDS && spent < PATIENCE; round++) {
            budget = Budget.of(50_000_000);
            long start = processor();
            outcome = search.run(budget);
            long took = processor() - start;
            first = round == 0 ? took : first;
            best = Math.min(best, took);
            spent += took;
        }
        LOG.log(System.Logger.Level.INFO, String.format(
                "%-34s first %5d.%03d ms, best %5d.%03d ms, %,d looks: %s", name,
                first / 1_000_000, first / 1_000 % 1_000, best / 1_000_000, best / 1_000 % 1_000,
                budget.used(), outcome));
    }

    /**
     * Nanoseconds that the processor spent on this thread, so that other work on the machine does not count.
     */
    private static long processor() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static Box cube(int axes, long size) {
        return Box.of(Collections.nCopies(axes, new Interval(0, size)));
    }

    private static List<Question> questions() {
        Box seven = cube(7, 1_000_000);
        Box eight = cube(8, 1_000_000);
        List<Box> partition = Partitions.random(seven, 1_500, new Random(1));
        List<Box> damaged = partition.stream().filter(box -> box != partition.get(700)).toList();
        return List.of(
                new Question("partition 1500 x 7", seven, partition),
                new Question("one box taken out", seven, damaged),
                new Question("60 x 8", eight, Partitions.random(eight, 60, new Random(1))),
                new Question("widened 1500 x 7", seven, Partitions.widened(seven, partition)),
                new Question("widened again", seven, Partitions.widened(seven, Partitions.widened(seven,
                        Partitions.random(seven, 1_500, new Random(2))))),
                new Question("sparse small 1500 x 7", seven, sparse(seven, 4)),
                new Question("sparse large 1500 x 7", seven, sparse(seven, 2)),
                new Question("pinwheels 1500 x 7", seven, Partitions.pinwheels(seven, 1_500, new Random(1))),
                new Question("grid 3^7", cube(7, 9), Partitions.grid(cube(7, 9), 3)),
                new Question("slabs 70 x 7", seven, Partitions.slabs(seven, 10)),
                new Question("cliques 6 of 20", cube(6, 20), Partitions.cliques(6, 20, 70, new Random(1))),
                new Question("cliques 12 of 40", cube(12, 40), Partitions.cliques(12, 40, 75, new Random(1))),
                new Question("100000 x 8", eight, Partitions.random(eight, 100_000, new Random(1))));
    }

    private static List<Box> sparse(Box whole, int part) {
        return Partitions.sparse(whole, 1_500, part, new Random(1));
    }
}
