package rungwright.bench.proof;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import rungwright.bench.Table;

/** How long it takes to prove a table complete and without overlaps, beside KIE's validator and Z3. */
public final class Main {
    private static final List<String> TABLES = List.of(
            "whole 10 3", "whole 100 3", "whole 100 5", "whole 100 7", "out 100 7", "whole 200 7",
            "whole 60 8", "whole 1500 3", "whole 1500 5", "whole 1500 7", "out 1500 7", "wide 1500 7",
            "pinwheels 1500 7", "grid 2187 7", "heavy 1500 7", "slabs 70 7", "sparse4 1500 7", "sparse2 1500 7",
            "whole 1000 8", "whole 10000 8", "whole 100000 8", "cliques 36 5", "cliques 60 12");
    private static final Set<String> WITH_KIE = Set.of("whole 10 3", "whole 100 3", "whole 100 5", "whole 100 7",
            "out 100 7", "whole 200 7");
    private static final Set<String> WITH_Z3 = Set.of("whole 100 7", "whole 1500 7", "out 1500 7", "heavy 1500 7",
            "pinwheels 1500 7", "cliques 36 5");

    private Main() { }

    /** Runs all tables, or those whose names are given. */
    public static void main(String[] arguments) {
        Table table = new Table("The proof (ms of processor time, warm)", "table: rules x measures", "gaps", "overlaps",
                "both", "KIE both", "KIE / ours", "Z3 gap", "Z3 / ours", "Z3 both", "Z3 / ours", "found", "KIE found");
        Table any = new Table("Asked as Z3 is, whether there is any gap, any overlap (ms of processor time, warm)",
                "table: rules x measures", "any gap", "Z3", "Z3 / ours", "both", "Z3", "Z3 / ours");
        for (String name : arguments.length > 0 ? List.of(arguments) : TABLES) {
            row(table, any, name);
        }
        table.print();
        any.print();
        if (arguments.length == 0) {
            cold();
            Programs.print();
        }
    }

    private static void row(Table table, Table any, String name) {
        Ours ours = new Ours(Cases.of(name));
        ours.check();
        double gaps = ours.gapTime();
        double overlaps = ours.overlapTime();
        Peer none = new Peer(OptionalDouble.empty(), "");
        Peer kie = WITH_KIE.contains(name) ? Peer.ask(Kie.class, name) : none;
        boolean z3 = WITH_Z3.contains(name);
        Peer gap = z3 ? Peer.ask(Z3.class, name, "gap", "bits").or(Peer.ask(Z3.class, name, "gap", "ints")) : none;
        Peer pair = z3 ? Peer.ask(Z3.class, name, "overlap", "ints") : none;
        OptionalDouble both = gap.millis().isPresent() && pair.millis().isPresent()
                ? OptionalDouble.of(gap.millis().getAsDouble() + pair.millis().getAsDouble()) : OptionalDouble.empty();
        table.row(name, Table.number(gaps), Table.number(overlaps), Table.number(gaps + overlaps),
                shown(kie), ours.times(kie.millis(), gaps + overlaps), shown(gap), ours.times(gap.millis(), gaps),
                shown(new Peer(both, pair.answer())), ours.times(both, gaps + overlaps), ours.found(), kie.answer());
        if (z3) {
            double anyGap = ours.anyGapTime();
            double anyBoth = anyGap + ours.anyOverlapTime();
            any.row(name, Table.number(anyGap), shown(gap), ours.times(gap.millis(), anyGap),
                    Table.number(anyBoth), shown(new Peer(both, pair.answer())), ours.times(both, anyBoth));
        }
    }

    private static String shown(Peer peer) {
        return peer.millis().isPresent() ? Table.number(peer.millis().getAsDouble()) : peer.answer();
    }

    private static void cold() {
        Table table = new Table("The first proof of a process (ms from the start of main)", "table", "least of five");
        for (String name : List.of("whole 60 8", "whole 1500 7")) {
            Peer best = Peer.ask(Cold.class, name);
            for (int round = 1; round < 5; round++) {
                best = best.or(Peer.ask(Cold.class, name));
            }
            table.row(name, Table.number(best.millis().orElseThrow()));
        }
        table.print();
    }
}
