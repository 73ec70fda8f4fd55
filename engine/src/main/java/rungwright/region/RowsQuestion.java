package rungwright.region;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** What one question asks of the rows of a set table, once what must be settled is. */
final class RowsQuestion {
    private final SetTable table;
    private final Domains domains;
    private final List<RowWindows> asked = new ArrayList<>();
    private final List<RowDemand> demands;
    private final Budget budget;

    RowsQuestion(SetTable table, Domains domains, Window[] windows, Budget budget) {
        this.table = table;
        this.domains = domains;
        this.budget = budget;
        table.quantities().forEach(quantity -> asked.add(quantity.windows(domains, windows)));
        this.demands = RowDemand.of(table.quantities(), asked);
    }

    SetTable table() {
        return table;
    }

    Domains domains() {
        return domains;
    }

    List<RowDemand> demands() {
        return demands;
    }

    Budget budget() {
        return budget;
    }

    /** The most rows there can be. */
    int mostRows() {
        return (int) domains.high(Unknowns.SETS);
    }

    RowWindows asked(int quantity) {
        return asked.get(quantity);
    }

    /** The quantities whose total is asked about, by number. */
    List<Integer> totals() {
        List<Integer> totals = new ArrayList<>();
        for (int i = 0; i < asked.size(); i++) {
            if (!asked.get(i).total().isAll()) {
                totals.add(i);
            }
        }
        return totals;
    }

    /**
     * The windows of the quantities in a row that serves some demands, in the order of {@link SetTable#in}.
     */
    Window[] windows(int pattern, Collection<RowDemand> served) {
        return table.in(pattern).stream().map(quantity -> {
            Window window = asked.get(quantity).allowed();
            for (RowDemand demand : served) {
                window = window.and(demand.windows().getOrDefault(quantity, Window.ALL));
            }
            return window;
        }).toArray(Window[]::new);
    }

    /** A row with exactly these measures that serves the demands. */
    Optional<Row> row(int pattern, Collection<RowDemand> served) {
        Window[] windows = windows(pattern, served);
        if (Arrays.stream(windows).anyMatch(Window::isEmpty)) {
            return Optional.empty();
        }
        Search search = new Search(table.ties(pattern), windows, budget);
        return search.find(table.withRows(domains, List.of(pattern)))
                .map(found -> table.row(found.domains(), 0, pattern));
    }

    /** Whether nothing speaks against rows yet, though not all is settled. */
    boolean isHopeful() {
        return demands.stream().allMatch(this::mayBeServed) && totals().stream().allMatch(this::mayAddUp);
    }

    private boolean mayBeServed(RowDemand demand) {
        return narrowed(demand.parts(), List.of(demand)).isPresent();
    }

    private Optional<Domains> narrowed(int pattern, List<RowDemand> served) {
        Window[] windows = windows(pattern, served);
        if (Arrays.stream(windows).anyMatch(Window::isEmpty)) {
            return Optional.empty();
        }
        Search search = new Search(table.ties(pattern), windows, budget);
        return search.narrowed(table.withRows(domains, List.of(pattern)));
    }

    /** One row at least, and not more than there can be, each as small or as large as it may be. */
    private boolean mayAddUp(int quantity) {
        RowQuantity each = table.quantities().get(quantity);
        Optional<Domains> box = narrowed(each.parts(), List.of());
        return box.isEmpty() ? budget.isSpent()
                : each.amount(table.first(0)).ends(box.get())
                        .map(ends -> meets(quantity, ends.hull(ends.times(mostRows())))).orElse(true);
    }

    /** Whether some number from the one end to the other is a total that is asked for. */
    boolean meets(int quantity, Ends ends) {
        Window total = asked.get(quantity).total();
        return total.side(ends.least()) <= 0 && total.side(ends.greatest()) >= 0;
    }

    /**
     * Between which ends the amounts of a row lie, one a total, nothing where that is not known; nothing at
     * all where there is no such row.
     */
    Optional<List<Optional<Ends>>> ends(int pattern, List<RowDemand> served) {
        return narrowed(pattern, served).map(box -> totals().stream().map(quantity -> {
            RowQuantity each = table.quantities().get(quantity);
            return each.isIn(pattern) ? each.amount(table.first(0)).ends(box) : Optional.of(Ends.NOUGHT);
        }).toList());
    }

    /** The rows, in order, or nothing where there are none or the budget is spent. */
    Optional<List<Row>> rows() {
        if (!isHopeful()) {
            return Optional.empty();
        }
        boolean room = demands.size() <= mostRows();
        if (totals().isEmpty() && room) {
            return oneEach();
        }
        Optional<List<Row>> rows = room
                ? new RowFill(this, RowPlace.oneEach(demands)).rows() : Optional.empty();
        Optional<List<RowPlace>> merged = rows.isPresent() ? Optional.empty()
                : RowPlace.merged(this).filter(places -> places.size() <= mostRows());
        if (merged.isPresent()) {
            rows = new RowFill(this, merged.get()).rows();
        }
        return rows.isPresent() ? rows : new RowWalk(this).rows();
    }

    /** A row for each demand. */
    private Optional<List<Row>> oneEach() {
        List<Row> rows = new ArrayList<>();
        for (RowDemand demand : demands) {
            Optional<Row> row = row(demand.parts(), List.of(demand));
            if (row.isEmpty()) {
                return Optional.empty();
            }
            rows.add(row.get());
        }
        return Optional.of(rows);
    }
}
