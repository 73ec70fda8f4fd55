package rungwright.oracle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Every combination of what the rules can tell about the sets of a session, found by adding one set after
 * another, as far
 * as thirty.
 */
final class SetStates {
    private static final int MOST_SETS = 30;
    private static final int MOST_STATES = 1500;

    /**
     * Something that is followed from set to set: one take of a name, or whether every or any set met a
     * criterion.
     */
    private record Track(String name, Optional<Toy.Take> take, Optional<Crit> crit) {
    }

    /** What was followed, after all sets; and their number, capped. */
    record State(long sets, Map<Track, Frac> seen) {
        Frac value(String name, Toy.Take take) {
            return seen.get(new Track(name, Optional.of(take), Optional.empty()));
        }

        boolean met(Crit crit) {
            return seen.get(new Track(crit.name(), Optional.empty(), Optional.of(crit))).equals(Frac.ONE);
        }
    }

    private final Toy toy;
    private final SessionView outer;
    private final Uses uses;
    private final List<Track> tracks = new ArrayList<>();
    private final Map<Track, Frac> limits = new LinkedHashMap<>();

    /** The sets of sessions whose other readings, facts and earlier readings are those of {@code outer}. */
    SetStates(Toy toy, Uses uses, SessionView outer) {
        this.toy = toy;
        this.uses = uses;
        this.outer = outer;
        uses.crits().stream().filter(crit -> followed(crit.name())).map(this::track).distinct()
                .forEach(tracks::add);
        tracks.forEach(track -> limits.put(track, limit(track)));
    }

    /** Whether a name is read set by set, with no earlier reading missing that would fix it. */
    private boolean followed(String name) {
        return toy.setByset(name) && !first(name);
    }

    private boolean first(String name) {
        return toy.worked(name).stream().flatMap(w -> w.form().previous().stream())
                .anyMatch(earlier -> !outer.previous().containsKey(earlier));
    }

    private Track track(Crit crit) {
        switch (crit.which()) {
            case EVERY:
            case ANY:
                return new Track(crit.name(), Optional.empty(), Optional.of(crit));
            default:
                return new Track(crit.name(), Optional.of(takeOf(toy, crit)), Optional.empty());
        }
    }

    static Toy.Take takeOf(Toy toy, Crit crit) {
        return crit.which() == Crit.Which.TAKE ? toy.take(crit.name()).orElseThrow()
                : Toy.Take.valueOf(crit.which().name());
    }

    /** One above the largest number that a total is compared with: larger totals are all alike. */
    private Frac limit(Track track) {
        return uses.crits(track.name()).stream().flatMap(crit -> crit.bounds().stream()
                .map(bound -> outer.number(crit, bound))).reduce(Frac.ZERO, (a, b) -> a.less(b) ? b : a)
                .plus(Frac.ONE);
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
        Map<Track, Frac> fixed = new LinkedHashMap<>();
        tracks.stream().filter(track -> absent.containsKey(track.name()))
                .forEach(track -> fixed.put(track, start(track, absent.get(track.name()))));
        Set<Map<Track, Frac>> effects = new LinkedHashSet<>();
        rows(absent).forEach(row -> effects.add(effect(row, absent)));
        boolean growing = effects.stream().anyMatch(effect -> effect.values().stream()
                .anyMatch(v -> v.sign() < 0));
        long cap = uses.asks("sets logged") ? Math.min(MOST_SETS, uses.largest("sets logged") + 1) : 1;
        Set<Map<Track, Frac>> level = Set.of(fixed);
        Set<Map<Track, Frac>> before = Set.of();
        for (int sets = 1; sets <= MOST_SETS; sets++) {
            if (!level.equals(before)) {
                before = level;
                level = oneMore(level, effects, !growing);
            }
            long shown = Math.min(cap, sets);
            level.stream().filter(state -> state.keySet().containsAll(tracks))
                    .forEach(state -> found.add(new State(shown, state)));
        }
    }

    private Set<Map<Track, Frac>> oneMore(Set<Map<Track, Frac>> level, Set<Map<Track, Frac>> effects,
            boolean cap) {
        Set<Map<Track, Frac>> next = new LinkedHashSet<>();
        for (Map<Track, Frac> state : level) {
            for (Map<Track, Frac> effect : effects) {
                Map<Track, Frac> more = new LinkedHashMap<>(state);
                effect.forEach((track, value) -> more.merge(track, value, (old, now) ->
                        add(track, old, now, cap)));
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
            if (absent.containsKey(measure.name())) {
                continue;
            }
            List<Map<String, Frac>> longer = new ArrayList<>(rows);
            for (Map<String, Frac> row : rows) {
                for (Frac value : measure.grid().values()) {
                    Map<String, Frac> more = new TreeMap<>(row);
                    more.put(measure.name(), value);
                    longer.add(more);
                }
            }
            rows = longer;
        }
        return rows;
    }

    /** What one row adds to what is followed. */
    private Map<Track, Frac> effect(Map<String, Frac> row, Map<String, Frac> absent) {
        Map<Track, Frac> effect = new LinkedHashMap<>();
        for (Track track : tracks) {
            if (!absent.containsKey(track.name())) {
                inRow(track.name(), row, absent).ifPresent(value -> effect.put(track, start(track, value)));
            }
        }
        return effect;
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

    private Frac add(Track track, Frac old, Frac now, boolean cap) {
        if (track.crit().isPresent()) {
            boolean every = track.crit().get().which() == Crit.Which.EVERY;
            return every == old.less(now) ? old : now;
        }
        switch (track.take().orElseThrow()) {
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
                return cap && limits.get(track).less(sum) ? limits.get(track) : sum;
        }
    }
}
