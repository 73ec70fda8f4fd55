package rungwright.region;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwright.measure.Ratio;

/**
 * Looks for rows with wanted totals among the simplest: those of a layout, some number of equal rows, and
 * perhaps one more. What it finds is right; that it finds nothing says nothing.
 */
final class RowFill {
    private static final long ALLOWANCE_EACH = 400;

    // What all attempts together may cost.
    private final Budget allowance = Budget.of(8_000);

    private final RowsQuestion question;
    private final SetTable table;
    private final List<RowPlace> layout;
    private final List<Integer> patterns = new ArrayList<>();
    // Between which ends the amounts lie: of the rows of the layout together, and of a row of each pattern.
    private List<Optional<Ends>> ofLayout = List.of();
    private final List<List<Optional<Ends>>> ofPatterns = new ArrayList<>();

    RowFill(RowsQuestion question, List<RowPlace> layout) {
        this.question = question;
        this.layout = layout;
        this.table = question.table();
        ofLayout = Collections.nCopies(question.totals().size(), Optional.of(Ends.NOUGHT));
        for (RowPlace place : layout) {
            ofLayout = plus(ofLayout, question.ends(place.pattern(), place.served()).orElse(ofLayout), 1);
        }
        Stream.concat(Stream.of(table.full()), table.quantities().stream().map(RowQuantity::parts)).distinct()
                .forEach(pattern -> question.ends(pattern, List.of()).ifPresent(ends -> {
                    patterns.add(pattern);
                    ofPatterns.add(ends);
                }));
    }

    private static List<Optional<Ends>> plus(
            List<Optional<Ends>> some, List<Optional<Ends>> more, int times) {
        List<Optional<Ends>> sum = new ArrayList<>();
        for (int i = 0; i < some.size(); i++) {
            Optional<Ends> other = more.get(i);
            sum.add(some.get(i).flatMap(ends -> other.map(each -> ends.plus(each.times(times)))));
        }
        return sum;
    }

    Optional<List<Row>> rows() {
        int room = question.mostRows() - layout.size();
        Optional<List<Row>> rows = mayAddUp(ofLayout) ? filled(List.of(), 0) : Optional.empty();
        for (int equal = 1; equal <= room && rows.isEmpty() && !isSpent(); equal++) {
            rows = tried(equal, equal < room);
        }
        return rows;
    }

    private boolean isSpent() {
        return allowance.isSpent() || question.budget().isSpent();
    }

    private boolean mayAddUp(List<Optional<Ends>> sums) {
        List<Integer> totals = question.totals();
        for (int i = 0; i < sums.size(); i++) {
            int quantity = totals.get(i);
            if (!sums.get(i).map(ends -> question.meets(quantity, ends)).orElse(true)) {
                return false;
            }
        }
        return true;
    }

    private Optional<List<Row>> tried(int equal, boolean oneMore) {
        for (int one = 0; one < patterns.size(); one++) {
            List<Optional<Ends>> sums = plus(ofLayout, ofPatterns.get(one), equal);
            Optional<List<Row>> rows =
                    mayAddUp(sums) ? filled(List.of(patterns.get(one)), equal) : Optional.empty();
            for (int other = 0; other < patterns.size() && oneMore && rows.isEmpty(); other++) {
                if (mayAddUp(plus(sums, ofPatterns.get(other), 1))) {
                    rows = filled(List.of(patterns.get(one), patterns.get(other)), equal);
                }
            }
            if (rows.isPresent() || isSpent()) {
                return rows;
            }
        }
        return Optional.empty();
    }

    /**
     * The rows of the layout, then one row of each of {@code fillers}, the first of them {@code equal} times.
     */
    private Optional<List<Row>> filled(List<Integer> fillers, int equal) {
        List<Integer> all = new ArrayList<>();
        layout.forEach(place -> all.add(place.pattern()));
        all.addAll(fillers);
        List<Steady> steadies = new ArrayList<>();
        List<Window> windows = new ArrayList<>();
        for (int row = 0; row < all.size(); row++) {
            List<RowDemand> served = row < layout.size() ? layout.get(row).served() : List.of();
            for (int quantity : table.in(all.get(row))) {
                steadies.add(table.quantities().get(quantity).value(table.first(row)));
            }
            Collections.addAll(windows, question.windows(all.get(row), served));
        }
        for (int quantity : question.totals()) {
            steadies.add(total(quantity, all, equal));
            windows.add(question.asked(quantity).total());
        }
        Ties ties = Ties.of(table.unknowns(), steadies);
        Budget part = Budget.of(ALLOWANCE_EACH);
        Search search = new Search(ties, windows.toArray(Window[]::new), part);
        Optional<Found> found = search.find(table.withRows(question.domains(), all));
        question.budget().pay(part.used());
        allowance.pay(part.used());
        return found.map(each -> laidOut(each.domains(), all, equal));
    }

    private Steady total(int quantity, List<Integer> all, int equal) {
        RowQuantity each = table.quantities().get(quantity);
        List<Steady> amounts = new ArrayList<>();
        for (int row = 0; row < all.size(); row++) {
            if (each.isIn(all.get(row))) {
                Steady amount = each.amount(table.first(row));
                amounts.add(row == layout.size() ? amount.times(Ratio.of(equal)) : amount);
            }
        }
        return Steady.sum(amounts);
    }

    private List<Row> laidOut(Domains found, List<Integer> all, int equal) {
        List<Row> rows = new ArrayList<>();
        List<Row> fillers = new ArrayList<>();
                for (int row = 0; row < all.size(); row++) {
            Row each = table.row(found, row, all.get(row));
            if (row < layout.size()) {
                rows.add(each);
            } else {
                fillers.addAll(Collections.nCopies(row == layout.size() ? equal : 1, each));
            }
        }
        long ahead = layout.stream().filter(place -> place.kind() != RowDemand.Kind.LAST).count();
        rows.addAll((int) ahead, fillers);
        return rows;
    }
}
