package rungwright.oracle;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Every combination of what the rules can tell about the sets of a session, found by adding one set after
 * another, as far as thirty.
 */
final class SetStates {
    private static final int MOST_SETS = 30;
    private static final int MOST_STATES = 1500;

    /**
     * Something followed from set to set: one take of a name, or whether every or any set met a criterion.
     */
    private record Track(String name, Optional<Toy.Take> take, Optional<Crit> crit) {
    }

    /**
     * What was followed, after all sets.
     *
     * @param sets the number of sets, capped
     * @param seen what each track came to, in their order; empty where no set has a reading
     */
    record State(long sets, List<Optional<Frac>> seen) {
    }

    private final Toy toy;
    private final SessionView outer;
    private final Uses uses;
    private final List<Track> tracks;
    private final List<Frac> limits;

    /** The sets of sessions whose other readings, facts and earlier readings are those of {@code outer}. */
    SetStates(Toy toy, Uses uses, SessionView outer) {
        this.toy = toy;
        this.uses = uses;
        this.outer = outer;
        this.tracks = uses.crits().stream().filter(crit -> followed(crit.name())).map(this::track).distinct()
                .toList();
        this.limits = tracks.stream().map(this::limit).toList();
    }

    /** Whether a name is read set by set, with no earlier reading missing that would fix it. */
    boolean followed(String name) {
        return toy.setByset(name) && toy.worked(name).stream().flatMap(w -> w.form().previous().stream())
                .allMatch(earlier -> outer.previous().containsKey(earlier));
    }

    /** Whether a criterion on a name that is read set by set holds. */
    boolean holds(State state, Crit crit) {
        Frac seen = state.seen().get(tracks.indexOf(track(crit))).orElseThrow();
        return crit.which() == Crit.Which.EVERY || crit.which() == Crit.Which.ANY ? seen.equals(Frac.ONE)
                : Meaning.test(crit, seen, bound -> outer.number(crit, bound));
    }

    private Track track(Crit crit) {
        switch (crit.which()) {
            case EVERY:
            case ANY:
                return new Track(crit.name(), Optional.empty(), Optional.of(crit));
            case TAKE:
                return new Track(crit.name(), Optional.of(toy.take(crit.name()).orElseThrow()),
                        Optional.empty());
            default:
                return new Track(crit.name(), Optional.of(Toy.Take.valueOf(crit.which().name())),
                        Optional.empty());
        }
    }

    /** One above the largest number that a total is compared with: larger totals are all alike. */
    private Frac limit(Track track) {
        return uses.crits(track.name()).stream()
                .flatMap(crit -> crit.bounds().stream().map(bound -> outer.number(crit, bound)))
                .reduce(Frac.ZERO, (a, b) -> a.less(b) ? b : a).plus(Frac.ONE);
    }

    /** All states, over every choice of measures that no set has a reading of. */
    Set<State> all() {
        List<Toy.Measure> measures = uses.logged(true);
        Set<State> found = new LinkedHashSet<>();
        for (int choice = 0; choice < 1 << measures.size(); choice++) {
            Map<String, Frac> absent = new TreeMap<>();
            boolean possible = true;
            for (int i = 0; i < measures.size(); i++) {
                if ((choice >> i & 1) == 1) {
                    possible &= measures.get(i).ifNotLogged().isPresent();
                    String name = measures.get(i).name();
                    measures.get(i).ifNotLogged().ifPresent(value -> absent.put(name, value));
                }
            }
            if (possible) {
                addStates(absent, found);
            }
        }
        return found;
    }

    private void addStates(Map<String, Frac> absent, Set<State> found) {
        List<Optional<Frac>> fixed = tracks.stream()
                .map(track -> Optional.ofNullable(absent.get(track.name())).map(v -> start(track, v)))
                .toList();
        Set<List<Optional<Frac>>> effects = new LinkedHashSet<>();
        rows(absent).forEach(row -> effects.add(effect(row, absent)));
        boolean growing = effects.stream().flatMap(List::stream).flatMap(Optional::stream)
                .noneMatch(value -> value.sign() < 0);
        long cap = uses.asks("sets logged") ? Math.min(MOST_SETS, uses.largest("sets logged") + 1) : 1;
        Set<List<Optional<Frac>>> level = Set.of(fixed);
        Set<List<Optional<Frac>>> before = Set.of();
        for (int sets = 1; sets <= MOST_SETS; sets++) {
            if (!level.equals(before)) {
                before = level;
                level = oneMore(level, effects, growing);
            }
            long shown = Math.min(cap, sets);
            level.stream().filter(state -> state.stream().allMatch(Optional::isPresent))
                    .forEach(state -> found.add(new State(shown, state)));
        }
    }

    /** Every combination after one more set; where totals only grow, they are capped. */
    private Set<List<Optional<Frac>>> oneMore(Set<List<Optional<Frac>>> level,
            Set<List<Optional<Frac>>> effects, boolean growing) {
        Set<List<Optional<Frac>>> next = new LinkedHashSet<>();
        for (List<Optional<Frac>> state : level) {
            for (List<Optional<Frac>> effect : effects) {
                List<Optional<Frac>> more = new ArrayList<>(state);
                for (int track = 0; track < more.size(); track++) {
                    if (state.get(track).isEmpty()) {
                        more.set(track, effect.get(track));
                    } else if (effect.get(track).isPresent()) {
                        more.set(track, Optional.of(add(track, state.get(track).get(), effect.get(track)
                                .get(),
                                growing)));
                    }
                }
                next.add(more);
            }
            if (next.size() > MOST_STATES) {
                throw new TooLarge("more than " + MOST_STATES + " combinations of sets");
            }
        }
        return next;
    }

    /** Every row: a grid value or a blank for each measure that has some reading. */
    private List<Map<String, Frac>> rows(Map<String, Frac> absent) {
        List<Map<String, Frac>> rows = List.of(Map.of());
        for (Toy.Measure measure : uses.logged(true)) {
            List<Map<String, Frac>> longer = new ArrayList<>(rows);
            for (Map<String, Frac> row : rows) {
                for (Frac value : absent.containsKey(measure.name()) ? List.<Frac>of()
                        : measure.grid().values()) {
                    Map<String, Frac> more = new TreeMap<>(row);
                    more.put(measure.name(), value);
                    longer.add(more);
                }
            }
            rows = longer;
        }
        return rows;
    }

    /** What one row adds to what is followed; nothing to what is fixed. */
    private List<Optional<Frac>> effect(Map<String, Frac> row, Map<String, Frac> absent) {
        return tracks.stream().map(track -> absent.containsKey(track.name()) ? Optional.<Frac>empty()
                : inRow(track.name(), row, absent).map(value -> start(track, value))).toList();
    }

    private Optional<Frac> inRow(String name, Map<String, Frac> row, Map<String, Frac> absent) {
        if (!followed(name)) {
            return outer.value(name, Crit.Which.TAKE);
        }
        Optional<Toy.Worked> worked = toy.worked(name);
        if (worked.isEmpty()) {
            return Stream.of(absent, row).filter(map -> map.containsKey(name)).map(map -> map.get(name))
                    .findFirst();
        }
        Form.Look look = new Form.Look() {
            @Override
            public Optional<Frac> name(String part) {
                return inRow(part, row, absent).map(value -> Units.toBase(value, toy.unit(part)));
            }

            @Override
            public Optional<Frac> previous(String part) {
                return Optional.of(Units.toBase(outer.previous().get(part), toy.unit(part)));
            }
        };
        return worked.get().form().value(look).map(value -> Units.fromBase(value, worked.get().unit()));
    }

    private Frac start(Track track, Frac value) {
        return track.crit().map(crit -> Meaning.test(crit, value, bound -> outer.number(crit, bound)))
                .map(met -> met ? Frac.ONE : Frac.ZERO).orElse(value);
    }

    private Frac add(int track, Frac old, Frac now, boolean growing) {
        Optional<Crit> crit = tracks.get(track).crit();
        if (crit.isPresent()) {
            boolean every = crit.get().which() == Crit.Which.EVERY;
            return every == old.less(now) ? old : now;
        }
        switch (tracks.get(track).take().orElseThrow()) {
            case HIGHEST:
                return old.less(now) ? now : old;
            case LOWEST:
                return now.less(old) ? now : old;
            case FIRST:
                return old;
            case LAST:
                return now;
            default:
                Frac sum = old.plus(now);
                return growing && limits.get(track).less(sum) ? limits.get(track) : sum;
        }
    }
}
