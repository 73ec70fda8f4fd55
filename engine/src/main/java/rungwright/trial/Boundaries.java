package rungwright.trial;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwright.program.Program;
import rungwright.spec.CaseSpec;

/**
 * Cases that try everything that can be tried of a program, as few as were found to do, with today's
 * decisions as what is expected: for a coach to read and to accept.
 *
 * @param cases each case with the things that it tries and no case before it did
 */
public record Boundaries(List<Boundary> cases) {
    private static final int MOST = 100;

    /** Copies the cases. */
    public Boundaries {
        cases = List.copyOf(cases);
    }

    /**
     * One case.
     *
     * @param tries what it tries, in words
     */
    public record Boundary(CaseSpec spec, List<String> tries) {
        /** Copies the words. */
        public Boundary {
            tries = List.copyOf(tries);
        }
    }

    /** Those of a program; {@code told} hears how many of how many things are tried so far. */
    public static Boundaries of(Tryouts tryouts, Heard told) {
        Map<Item, Play> plays = new LinkedHashMap<>();
        Set<Item> open = new LinkedHashSet<>(tryouts.items());
        for (Item item : tryouts.items()) {
            if (open.remove(item)) {
                Optional<Play> play = tryouts.play(item, List.copyOf(open));
                play.ifPresent(each -> {
                    plays.put(item, each);
                    open.removeAll(tryouts.tried(List.of(each.run(tryouts.program()))));
                });
            }
            told.of(tryouts.items().size() - open.size(), tryouts.items().size());
        }
        return new Boundaries(written(tryouts, needed(tryouts, plays)));
    }

    /** Without those of which everything is tried by others too, the last being looked at first. */
    private static Map<Item, Play> needed(Tryouts tryouts, Map<Item, Play> plays) {
        Map<Item, Set<Item>> tried = new LinkedHashMap<>();
        plays.forEach((item, play) -> tried.put(item, tryouts.tried(List.of(play.run(tryouts.program())))));
        List<Item> backwards = new ArrayList<>(plays.keySet());
        Collections.reverse(backwards);
        for (Item item : backwards) {
            Set<Item> others = new LinkedHashSet<>();
            tried.forEach((other, its) -> others.addAll(other.equals(item) ? Set.of() : its));
            if (others.containsAll(tried.get(item))) {
                tried.remove(item);
            }
        }
        Map<Item, Play> needed = new LinkedHashMap<>(plays);
        needed.keySet().retainAll(tried.keySet());
        return needed;
    }

    private static List<Boundary> written(Tryouts tryouts, Map<Item, Play> plays) {
        Program program = tryouts.program();
        List<Boundary> cases = new ArrayList<>();
        Set<Item> before = new LinkedHashSet<>();
        Set<String> names = new LinkedHashSet<>();
        plays.forEach((item, play) -> {
            Set<Item> tried = tryouts.tried(List.of(play.run(program)));
            tried.removeAll(before);
            before.addAll(tried);
            cases.add(new Boundary(new Scribe(program).spec(name(item, names), play),
                    tried.stream().map(Item::show).toList()));
        });
        return cases;
    }

    /** A name that no case before has: what the case was made for, without back-ticks. */
    private static String name(Item item, Set<String> names) {
        String plain = item.show().replace("`", "");
        String cut = plain.length() > MOST ? plain.substring(0, plain.offsetByCodePoints(0, MOST)) : plain;
        String name = cut;
        for (int number = 2; !names.add(name); number++) {
            name = cut + " " + number;
        }
        return name;
    }
}
