package rungwright.region;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwright.measure.Ratio;

/** All kinds of rows that a question allows, each once. */
final class RowSteps {
    private final RowsQuestion question;
    private final SetTable table;
    private final List<Integer> totals;
    private final Map<Kind, Row> kinds = new LinkedHashMap<>();

    private record Kind(int pattern, long serves, List<Ratio> amounts) {
    }

    RowSteps(RowsQuestion question) {
        this.question = question;
        this.table = question.table();
        this.totals = question.totals();
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
        return Optional.of(inWholeUnits());
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
            kinds.put(new Kind(pattern, bits(wanted), List.of()), row.get());
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
        while (more) {
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
        List<Ratio> amounts = totals.stream().map(quantity -> amount(quantity, pattern, row)).toList();
        Kind kind = new Kind(pattern, serves, amounts);
        if (!kinds.containsKey(kind)) {
            kinds.put(kind, table.row(row, 0, pattern));
        }
    }

    private boolean isServed(RowDemand demand, int pattern, Domains row) {
        return demand.isAbout(pattern) && demand.windows().entrySet().stream()
                .allMatch(entry -> value(entry.getKey()).side(row, entry.getValue()) == 0);
    }

    private Steady value(int quantity) {
        return table.quantities().get(quantity).value(table.first(0));
    }

    private Ratio amount(int quantity, int pattern, Domains row) {
        RowQuantity each = table.quantities().get(quantity);
        return each.isIn(pattern) ? each.amount(table.first(0)).exactly(row) : Ratio.ZERO;
    }

    private List<RowStep> inWholeUnits() {
        List<BigInteger> units = units();
        List<RowStep> steps = new ArrayList<>();
        kinds.forEach((kind, row) -> {
            long[] amounts = new long[totals.size()];
            for (int i = 0; i < amounts.length; i++) {
                Ratio whole = kind.amounts().get(i).times(new Ratio(units.get(i), BigInteger.ONE));
                amounts[i] = whole.numerator().longValueExact();
            }
            steps.add(new RowStep(row, kind.serves(), amounts));
        });
        return steps;
    }

    /** For each total how many of its units make 1, so that every amount is a whole number of units. */
    List<BigInteger> units() {
        List<BigInteger> units = new ArrayList<>();
        for (int i = 0; i < totals.size(); i++) {
            BigInteger unit = BigInteger.ONE;
            for (Kind kind : kinds.keySet()) {
                BigInteger other = kind.amounts().get(i).denominator();
                unit = unit.divide(unit.gcd(other)).multiply(other);
            }
            units.add(unit);
        }
        return units;
    }
}
