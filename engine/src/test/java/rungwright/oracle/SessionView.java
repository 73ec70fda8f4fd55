package rungwright.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One session of one person as the rules see it.
 *
 * @param counters the built-ins that may be asked about, by name
 * @param previous the latest earlier readings, each in its measure's unit
 */
record SessionView(Toy toy, Person person, Logged logged, Map<String, Frac> counters, Map<String,
        Frac> previous)
        implements View {

    @Override
    public boolean holds(Crit crit) {
        switch (crit.which()) {
            case EVERY:
                return every(crit);
            case ANY:
                return any(crit);
            default:
                return test(crit, value(crit.name(), crit.which()).orElseThrow());
        }
    }

    /** The value of a name by its own take, or by that of {@code which}, which is not EVERY or ANY. */
    Optional<Frac> value(String name, Crit.Which which) {
        switch (which) {
            case FIRST:
                return seen(name).by(Toy.Take.FIRST);
            case LAST:
                return seen(name).by(Toy.Take.LAST);
            case TOTAL:
                return seen(name).by(Toy.Take.TOTAL);
            default:
                return seen(name).by(toy.take(name).orElse(Toy.Take.LAST));
        }
    }

    private boolean every(Crit crit) {
        Seen seen = seen(crit.name());
        return seen.one().stream().allMatch(value -> test(crit, value))
                && seen.sets().stream().allMatch(value -> test(crit, value));
    }

    private boolean any(Crit crit) {
        Seen seen = seen(crit.name());
        return seen.one().stream().anyMatch(value -> test(crit, value))
                || seen.sets().stream().anyMatch(value -> test(crit, value));
    }

    /** A bound as a number in the unit of the criterion's name. */
    Frac number(Crit crit, Crit.Bound bound) {
        return bound.share() ? Units.fromBase(person.share(toy, bound), toy.unit(crit.name()))
                : bound.number();
    }

    private boolean test(Crit crit, Frac value) {
        return Meaning.test(crit, value, bound -> number(crit, bound));
    }

    /** Whether a rule that asks about the name gets an answer. */
    boolean answers(String name) {
        return !seen(name).missing() && toy.worked(name).stream()
                .allMatch(worked -> worked.form().names().stream().allMatch(this::answers));
    }

    Seen seen(String name) {
        if (counters.containsKey(name)) {
            return Seen.one(Optional.of(counters.get(name)));
        }
        if (toy.fact(name).isPresent()) {
            return Seen.one(Optional.of(person.count(toy, name)));
        }
        if (toy.assessment(name).isPresent()) {
            return Seen.one(Optional.ofNullable(person.assessed().get(name)));
        }
        if (toy.worked(name).isPresent()) {
            return workedOut(toy.worked(name).get());
        }
        Toy.Measure measure = toy.measure(name).orElseThrow();
        List<Frac> sets = logged.rows().stream().filter(row -> row.containsKey(name))
                .map(row -> row.get(name))
                .toList();
        if (measure.eachSet() && !sets.isEmpty()) {
            return new Seen(Optional.empty(), sets);
        }
        return Seen.one(Optional.ofNullable(logged.readings().get(name)).or(measure::ifNotLogged));
    }

    private Seen workedOut(Toy.Worked worked) {
        if (isFirst(worked) || !toy.setByset(worked.name())) {
            return Seen.one(inRow(worked.name(), -1));
        }
        List<Frac> sets = new ArrayList<>();
        for (int row = 0; row < logged.rows().size(); row++) {
            inRow(worked.name(), row).ifPresent(sets::add);
        }
        return new Seen(Optional.empty(), sets);
    }

    /** Whether an earlier reading that the formula itself asks for is not there yet. */
    private boolean isFirst(Toy.Worked worked) {
        return worked.form().previous().stream().anyMatch(name -> !previous.containsKey(name));
    }

    /** A name's reading in one row, in its unit; the row does not matter to what is read once a session. */
    private Optional<Frac> inRow(String name, int row) {
        Optional<Toy.Worked> worked = toy.worked(name);
        if (worked.isPresent()) {
            return isFirst(worked.get()) ? worked.get().ifNone()
                    : worked.get().form().value(new RowLook(row))
                    .map(v -> Units.fromBase(v, worked.get().unit()));
        }
        Seen seen = seen(name);
        return seen.sets().isEmpty() ? seen.one() : Optional.ofNullable(logged.rows().get(row).get(name));
    }

    /** What a formula reads in one row. */
    private final class RowLook implements Form.Look {
        private final int row;

        private RowLook(int row) {
            this.row = row;
        }

        @Override
        public Optional<Frac> name(String name) {
            return inRow(name, row).map(value -> Units.toBase(value, toy.unit(name)));
        }

        @Override
        public Optional<Frac> previous(String name) {
            return Optional.ofNullable(previous.get(name)).map(value -> Units.toBase(value, toy.unit(name)));
        }
    }
}
