package rungwright.compare;

import java.util.ArrayList;
import java.util.List;
import rungwright.program.Program;

/**
 * In what two programs differ: exactly the readings at which they decide differently, and what is defined
 * otherwise.
 *
 * <p>Where nothing that decides differs, the two are proven to decide the same for every trainee, in every
 * state that can be stored, at every session. With "12 reps move on" changed to 10, it is "reps 10 or 11 in
 * stage assisted dip: hold before, advance now", and a trainee to whom it happens.
 *
 * @param old the program before
 * @param changed the program after
 * @param renames stages that have another name now
 * @param differences in the order of the new program
 */
public record Comparison(Program old, Program changed, Renames renames, List<Difference> differences) {
    /** How many boxes may be looked at for each stage and section. */
    public static final long BUDGET = 2_000_000;

    /** Copies the differences. */
    public Comparison {
        differences = List.copyOf(differences);
    }

    /** Compares two programs whose stages are matched by name. */
    public static Comparison of(Program old, Program changed) {
        return of(old, changed, Renames.NONE);
    }

    /** Compares two programs of which some stages have another name now. */
    public static Comparison of(Program old, Program changed, Renames renames) {
        Sides sides = new Sides(old, changed, renames);
        List<Difference> differences = new ArrayList<>(PartChanges.of(sides));
        differences.addAll(new RuleChanges(sides, BUDGET).differences());
        return new Comparison(old, changed, renames, differences);
    }

    /** Whether both are proven to decide the same; words and prescriptions may differ. */
    public boolean isSame() {
        return differences.stream().noneMatch(Difference::decides);
    }

    /**
     * Stages that are gone and may have another name now, since one new stage decides the same, session for
     * session, on the same rungs.
     */
    public Renames perhapsRenamed() {
        return Meanings.of(old, changed, renames);
    }
}
