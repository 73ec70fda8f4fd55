package rungwright.region;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwright.measure.Ratio;

/**
 * Looks for rows with wanted totals among the simplest: a row for each demand, some number of equal rows, and
 * perhaps one more. What it finds is right; that it finds nothing says nothing.
 */
final class RowFill {
    private static final long ALLOWANCE = 400;

    private final RowsQuestion question;
    private final SetTable table;
    private final List<Integer> patterns;

    RowFill(RowsQuestion question) {
        this.question = question;
        this.table = question.table();
        this.patterns = Stream.concat(Stream.of(table.full()),
                table.quantities().stream().map(RowQuantity::parts)).distinct().toList();
    }

    Optional<List<Row>> rows() {
        int room = question.mostRows() - question.demands().size();
        Optional<List<Row>> rows = filled(List.of(), 0);
        for (int equal = 1; equal <= room && rows.isEmpty() && !question.budget().isSpent(); equal++) {
            rows = tried(equal, equal < room);
        }
        return rows;
    }

    private Optional<List<Row>> tried(int equal, boolean oneMore) {
        for (int pattern : patterns) {
            Optional<List<Row>> rows = filled(List.of(pattern), equal);
            for (int i = 0; i < patterns.size() && oneMore && rows.isEmpty(); i++) {
                rows = filled(List.of(pattern, patterns.get(i)), equal);
            }
            if (rows.isPresent() || question.budget().isSpent()) {
                return rows;
            }
        }
        return Optional.empty();
    }

    /**
     * Rows for the demands, then one row of each of {@code fillers}, the first of them {@code equal} times.
     */
    private Optional<List<Row>> filled(List<Integer> fillers, int equal) {
        List<Integer> all = new ArrayList<>();
        question.demands().forEach(demand -> all.add(demand.parts()));
        all.addAll(fillers);
        List<Steady> steadies = new ArrayList<>();
        List<Window> windows = new ArrayList<>();
        for (int row = 0; row < all.size(); row++) {
            List<RowDemand> served = row < question.demands().size()
                    ? List.of(question.demands().get(row)) : List.of();
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
        Budget part = Budget.of(ALLOWANCE);
        Search search = new Search(ties, windows.toArray(Window[]::new), part);
        Optional<Found> found = search.find(table.withRows(question.domains(), all));
        question.budget().pay(part.used());
        return found.map(each -> laidOut(each.domains(), all, equal));
    }

    private Steady total(int quantity, List<Integer> all, int equal) {
        RowQuantity each = table.quantities().get(quantity);
        List<Steady> amounts = new ArrayList<>();
        for (int row = 0; row < all.size(); row++) {
            if (each.isIn(all.get(row))) {
                Steady amount = each.amount(table.first(row));
                amounts.add(row == question.demands().size() ? amount.times(Ratio.of(equal)) : amount);
            }
        }
        return Steady.sum(amounts);
    }

    private List<Row> laidOut(Domains found, List<Integer> all, int equal) {
        List<Row> rows = new ArrayList<>();
        List<Row> fillers = new ArrayList<>();
        int demands = question.demands().size();
        for (int row = 0; row < all.size(); row++) {
            Row each = table.row(found, row, all.get(row));
            if (row < demands) {
                rows.add(each);
            } else {
                fillers.addAll(Collections.nCopies(row == demands ? equal : 1, each));
            }
        }
        long ahead = question.demands().stream().filter(d -> d.kind() != RowDemand.Kind.LAST).count();
        rows.addAll((int) ahead, fillers);
        return rows;
    }
}
