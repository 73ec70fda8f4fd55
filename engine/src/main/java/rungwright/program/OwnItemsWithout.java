package rungwright.program;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Items of a trainee's own list from which a rung does not come: for the rung {@code 25 kg}, bands of 40 and
 * 10 kg.
 *
 * <p>Lists of equal items are tried first, one for each value; where every one of them makes the rung the
 * range is small, and all lists are tried.
 */
final class OwnItemsWithout {
    private static final int MOST_TRIED = 200_000;

    private final Ladder.EachOf ladder;
    private final Optional<String> rung;
    private int tried;

    private OwnItemsWithout(Ladder.EachOf ladder, Optional<String> rung) {
        this.ladder = ladder;
        this.rung = rung;
    }

    /**
     * So many items, by position, that make no rung of that name, or where no name is given no rung at all.
     */
    static Optional<List<Long>> find(Ladder.EachOf ladder, int count, Optional<String> rung) {
        if (ladder.then().isPresent() && (rung.isEmpty() || ladder.then().equals(rung))) {
            return Optional.empty();
        }
        if (rung.isEmpty() || count == 0) {
            return count == 0 ? Optional.of(List.of()) : Optional.empty();
        }
        OwnItemsWithout search = new OwnItemsWithout(ladder, rung);
        for (long value = ladder.list().values().count() - 1; value >= 0; value--) {
            List<Long> equal = Collections.nCopies(count, value);
            if (search.lacks(equal)) {
                return Optional.of(equal);
            }
        }
        return search.extend(new ArrayList<>(), count, ladder.list().values().count() - 1);
    }

    private Optional<List<Long>> extend(List<Long> items, int left, long atMost) {
        if (left == 0) {
            return lacks(items) ? Optional.of(List.copyOf(items)) : Optional.empty();
        }
        for (long value = atMost; value >= 0 && tried < MOST_TRIED; value--) {
            items.add(value);
            Optional<List<Long>> found = extend(items, left - 1, value);
            items.remove(items.size() - 1);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private boolean lacks(List<Long> items) {
        tried++;
        List<Rung> rungs = ladder.rungs(new Facts(Map.of(ladder.list(), items)));
        return rung.map(name -> rungs.stream().noneMatch(each -> each.name().equals(name)))
                .orElse(rungs.isEmpty());
    }
}
