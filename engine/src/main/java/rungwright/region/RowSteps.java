package rungwright.region;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** All kinds of rows that a question allows, each once. */
final class RowSteps {
    // More kinds than these are too much for any budget, and for memory.
    private static final int MOST_KINDS = 200_000;

    private final RowsQuestion question;
    private final SetTable table;
    private final List<Integer> totals;
    private final RowKinds kinds;

    RowSteps(RowsQuestion question) {
        this.question = question;
        this.table = question.table();
        this.totals = question.totals();
        this.kinds = new RowKinds(totals.size());
    }

    /** The kinds of rows; nothing where the budget is spent. */
    Optional<List<RowStep>> steps() {
        for (int pattern = 1; pattern <= table.full(); pattern++) {
            if (totals.isEmpty()) {
                addByDemands(pattern);
            } else if (question.budget().pay(combinations(pattern))) {
                addAll(pattern);
            }
            if (question.budget().isSpent()) {
                return Optional.empty();
            }
        }
        return Optional.of(kinds.steps());
    }

    /** Rows told apart only by the demands they serve: those that serve as many as can be. */
    private void addByDemands(int pattern) {
        List<RowDemand> about =
                question.demands().stream().filter(demand -> demand.isAbout(pattern)).toList();
        addByDemands(pattern, about, new HashSet<>());
    }

    private void addByDemands(int pattern, List<RowDemand> wanted, Set<List<RowDemand>> seen) {
        if (!seen.add(wanted) || question.budget().isSpent()) {
            return;
        }
        Optional<Row> row = question.row(pattern, wanted);
        if (row.isPresent()) {
            kinds.add(pattern, bits(wanted), new long[0], new long[0], row.get().toArray());
            return;
        }
        for (RowDemand left : wanted) {
            addByDemands(pattern, wanted.stream().filter(demand -> demand != left).toList(), seen);
        }
    }

    private long bits(List<RowDemand> served) {
        long bits = 0;
        for (int i = 0; i < question.demands().size(); i++) {
            if (served.contains(question.demands().get(i))) {
                bits |= 1L << i;
            }
        }
        return bits;
    }

    private long combinations(int pattern) {
        Domains row = table.withRows(question.domains(), List.of(pattern));
        long combinations = 1;
        for (int place = 0; place < table.measures().size(); place++) {
            long size = row.size(table.first(0) + place);
            combinations = size > Long.MAX_VALUE / combinations ? Long.MAX_VALUE : combinations * size;
        }
        return combinations;
    }

    private void addAll(int pattern) {
        Domains ends = table.withRows(question.domains(), List.of(pattern));
        Domains row = ends.copy();
        int first = table.first(0);
        int places = table.measures().size();
        for (int place = 0; place < places; place++) {
            row.set(first + place, 0, 0);
        }
        Window[] allowed = question.windows(pattern, List.of());
        boolean more = true;
        while (more && question.budget().pay(kinds.size() < MOST_KINDS ? 0 : Long.MAX_VALUE)) {
            add(pattern, allowed, row);
            more = false;
            for (int place = 0; place < places && !more; place++) {
                long next = row.low(first + place) + 1;
                more = next <= ends.high(first + place);
                row.set(first + place, more ? next : 0, more ? next : 0);
            }
        }
    }

    private void add(int pattern, Window[] allowed, Domains row) {
        List<Integer> in = table.in(pattern);
        for (int i = 0; i < in.size(); i++) {
            if (value(in.get(i)).side(row, allowed[i]) != 0) {
                return;
            }
        }
        long serves = 0;
        for (int i = 0; i < question.demands().size(); i++) {
            if (isServed(question.demands().get(i), pattern, row)) {
                serves |= 1L << i;
            }
        }
        long[] tops = new long[totals.size()];
        long[] bottoms = new long[totals.size()];
        for (int i = 0; i < tops.length; i++) {
            amount(totals.get(i), pattern, row, tops, bottoms, i);
        }
        kinds.add(pattern, serves, tops, bottoms, positions(row));
    }

    private long[] positions(Domains row) {
        long[] positions = new long[table.measures().size()];
        for (int place = 0; place < positions.length; place++) {
            positions[place] = row.low(table.first(0) + place);
        }
        return positions;
    }

    private boolean isServed(RowDemand demand, int pattern, Domains row) {
        return demand.isAbout(pattern) && demand.windows().entrySet().stream()
                .allMatch(entry -> value(entry.getKey()).side(row, entry.getValue()) == 0);
    }

    private Steady value(int quantity) {
        return table.quantities().get(quantity).value(table.first(0));
    }

    private void amount(int quantity, int pattern, Domains row, long[] tops, long[] bottoms, int place) {
        RowQuantity each = table.quantities().get(quantity);
        bottoms[place] = 1;
        if (each.isIn(pattern)) {
            each.amount(table.first(0)).reduce(row, tops, bottoms, place);
        }
    }

    /** For each total how many of its units make 1, so that every amount is a whole number of units. */
    long[] units() {
        return kinds.units();
    }
}
