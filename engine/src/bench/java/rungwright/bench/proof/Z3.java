package rungwright.bench.proof;

import com.microsoft.z3.BoolExpr;
import com.microsoft.z3.BitVecExpr;
import com.microsoft.z3.Context;
import com.microsoft.z3.IntExpr;
import com.microsoft.z3.Solver;
import com.microsoft.z3.Status;
import java.util.ArrayList;
import java.util.List;
import rungwright.region.Box;
import rungwright.region.Interval;

/** Z3, asked whether some point lies in no rule, and whether some point lies in two. */
final class Z3 {
    private static final int BITS = 20;

    private final Context context = new Context();
    private final Case table;
    private final boolean bits;
    private final List<BoolExpr> inside = new ArrayList<>();
    private final List<BoolExpr> world = new ArrayList<>();

    private Z3(Case table, boolean bits) {
        this.table = table;
        this.bits = bits;
        for (int axis = 0; axis < table.whole().axes(); axis++) {
            world.add(in(axis, table.whole().along(axis)));
        }
        for (Box box : table.boxes()) {
            List<BoolExpr> all = new ArrayList<>();
            for (int axis = 0; axis < box.axes(); axis++) {
                if (!box.along(axis).equals(table.whole().along(axis))) {
                    all.add(in(axis, box.along(axis)));
                }
            }
            inside.add(context.mkAnd(all.toArray(new BoolExpr[0])));
        }
    }

    /** A process of its own: the name of a table, the question and the theory; prints what it took. */
    public static void main(String[] arguments) {
        Case table = Cases.of(arguments[0]);
        double best = Double.MAX_VALUE;
        double spent = 0;
        String answer = "";
        for (int round = 0; round < 5 && spent < 6_000; round++) {
            long start = Clock.now();
            Z3 z3 = new Z3(table, arguments[2].equals("bits"));
            answer = (arguments[1].equals("gap") ? z3.gap() : z3.overlap()) == Status.UNSATISFIABLE ? "none" : "some";
            double took = (Clock.now() - start) / 1e6;
            z3.context.close();
            best = Math.min(best, took);
            spent += took;
        }
        System.out.println(best + " " + answer);
    }

    private BoolExpr in(int axis, Interval side) {
        if (bits) {
            BitVecExpr value = context.mkBVConst("m" + axis, BITS);
            return context.mkAnd(context.mkBVUGE(value, context.mkBV(side.from(), BITS)),
                    context.mkBVULE(value, context.mkBV(side.last(), BITS)));
        }
        IntExpr value = context.mkIntConst("m" + axis);
        return context.mkAnd(context.mkGe(value, context.mkInt(side.from())),
                context.mkLe(value, context.mkInt(side.last())));
    }

    private Solver solver() {
        Solver solver = bits ? context.mkSolver("QF_BV") : context.mkSolver("QF_IDL");
        world.forEach(each -> solver.add(each));
        return solver;
    }

    private Status gap() {
        Solver solver = solver();
        inside.forEach(box -> solver.add(context.mkNot(box)));
        return solver.check();
    }

    /** That two rules speak at once. */
    private Status overlap() {
        Solver solver = solver();
        solver.add(context.mkNot(context.mkAtMost(inside.toArray(new BoolExpr[0]), 1)));
        return solver.check();
    }
}
