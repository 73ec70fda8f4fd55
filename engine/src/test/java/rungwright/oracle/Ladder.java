package rungwright.oracle;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A ladder, easiest rung first.
 *
 * @param amounts the amounts of a list, or the ends and the step of a run
 * @param share the run's end as a share of a fact, in percent
 * @param fact the list fact of an {@code each of}
 */
record Ladder(String name, Type type, List<String> names, List<Frac> amounts, String unit,
        Optional<Crit.Bound> share, String fact, boolean together, Optional<String> then) {
    /** The kinds of ladder. */
    enum Type {
        NAMES, AMOUNTS, RUN, SHARE_RUN, EACH
    }

    /** A rung: its name, and its amount where it has one. */
    record Rung(String name, Optional<Frac> amount) {
    }

    static Ladder names(String name, String... rungs) {
        return new Ladder(name, Type.NAMES, List.of(rungs), List.of(), "", Optional.empty(), "", false,
                Optional.empty());
    }

    static Ladder amounts(String name, String unit, List<Frac> amounts) {
        return new Ladder(name, Type.AMOUNTS, List.of(), amounts, unit, Optional.empty(), "", false,
                Optional.empty());
    }

    static Ladder run(String name, String unit, Frac from, Frac to, Frac by) {
        return new Ladder(name, Type.RUN, List.of(), List.of(from, to, by), unit, Optional.empty(), "", false,
                Optional.empty());
    }

    static Ladder shareRun(String name, String unit, Frac from, Crit.Bound share, Frac by) {
        return new Ladder(name, Type.SHARE_RUN, List.of(), List.of(from, from, by), unit, Optional.of(share),
                "",
                false, Optional.empty());
    }

    static Ladder each(String name, String fact, String unit, boolean together, Optional<String> then) {
        return new Ladder(name, Type.EACH, List.of(), List.of(), unit, Optional.empty(), fact, together,
                then);
    }

    /** The rungs of one person. */
    List<Rung> rungs(Toy toy, Person person) {
        switch (type) {
            case NAMES:
                return names.stream().map(n -> new Rung(n, Optional.empty())).toList();
            case AMOUNTS:
                return amounts.stream().map(this::rung).toList();
            case RUN:
                return run(amounts.get(1));
            case SHARE_RUN:
                return run(Units.fromBase(person.share(toy, share.orElseThrow()), unit));
            default:
                return each(person.list(fact));
        }
    }

    private List<Rung> run(Frac end) {
        List<Rung> found = new ArrayList<>();
        for (Frac at = amounts.get(0); at.compareTo(end) <= 0; at = at.plus(amounts.get(2))) {
            found.add(rung(at));
        }
        return found;
    }

    /** For 40, 25, 10 together first: 75, 65, 40, 25, 10. */
    private List<Rung> each(List<Frac> largestFirst) {
        List<Rung> found = new ArrayList<>();
        for (int count = largestFirst.size(); together && count >= 2; count--) {
            found.add(rung(largestFirst.subList(0, count).stream().reduce(Frac.ZERO, Frac::plus)));
        }
        Set<Frac> single = new LinkedHashSet<>(largestFirst);
        single.forEach(item -> found.add(rung(item)));
        then.ifPresent(without -> found.add(new Rung(without, Optional.empty())));
        return found;
    }

    private Rung rung(Frac amount) {
        return new Rung((amount.text() + " " + unit).strip(), Optional.of(amount));
    }
}
