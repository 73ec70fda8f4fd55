package rungwright.region;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Axes that depend on each other because they ask about the same readings.
 *
 * <p>Cells of a search repeat the same intervals over these few axes a lot, so answers are kept.
 */
final class ReadingsKnot implements Knot {
    private static final int MOST_KEPT = 20_000;

    private final int[] places;
    private final List<Question> questions;
    // Only looked up, so its order does not matter.
    private final Map<Asked, Boolean> kept = new HashMap<>();

    private record Asked(List<Interval> cell, int sets) {
    }

    /**
     * @param places where its axes stand in the space
     * @param questions one a case; the first takes every set measure to be logged in some set
     */
    ReadingsKnot(int[] places, List<Question> questions) {
        this.places = places.clone();
        this.questions = List.copyOf(questions);
    }

    @Override
    public int[] places() {
        return places.clone();
    }

    // Only a measure that counts as the same in every set, though logged in none, makes a case of its own.
    @Override
    public boolean takesMoreSets() {
        return questions.size() == 1;
    }

    @Override
    public boolean holds(Box cell, int sets, Budget budget) {
        Asked asked = new Asked(intervals(cell), sets);
        Boolean known = kept.get(asked);
        if (known != null) {
            return known;
        }
        boolean holds = find(asked.cell(), sets, budget).isPresent();
        if (budget.isSpent()) {
            return true;
        }
        if (kept.size() < MOST_KEPT) {
            kept.put(asked, holds);
        }
        return holds;
    }

    private List<Interval> intervals(Box cell) {
        List<Interval> intervals = new ArrayList<>(places.length);
        for (int place : places) {
            intervals.add(cell.along(place));
        }
        return intervals;
    }

    private Optional<Drawn> find(List<Interval> cell, int sets, Budget budget) {
        for (Question question : questions) {
            Optional<Found> found = question.ask(cell, sets, budget);
            if (found.isPresent() || budget.isSpent()) {
                return found.map(each -> new Drawn(question, each));
            }
        }
        return Optional.empty();
    }

    @Override
    public boolean draw(Box cell, int sets, Draft draft, Budget budget) {
        Optional<Drawn> drawn = find(intervals(cell), sets, budget);
        drawn.ifPresent(each -> draft.add(each.question(), each.found()));
        return drawn.isPresent();
    }

    private record Drawn(Question question, Found found) {
    }
}
