package rungwright.journal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rungwright.step.Kind;

/**
 * What became of a trainee, moment by moment in order of their days, and what it came to.
 *
 * @param decisions how often the program decided what, moves after a break included; never the coach's moves
 * @param sessions sessions that count
 * @param overrides the coach's own moves
 */
public record History(Fold fold, List<Moment> moments, Map<Kind, Integer> decisions, int sessions,
        int overrides) {
    /** Copies the collections. */
    public History {
        moments = List.copyOf(moments);
        decisions = new EnumMap<>(decisions);
    }

    /** That of a journal. */
    public static History of(Fold fold) {
        List<Moment> moments = new ArrayList<>();
        fold.earlier().forEach(entry -> moments.add(new Moment.Earlier(entry)));
        fold.withdrawn().forEach(by -> moments.add(
                new Moment.Withdrawn(fold.entries().get(by.corrects() - 1), by)));
        Map<Kind, Integer> decisions = new EnumMap<>(Kind.class);
        int sessions = 0;
        int overrides = 0;
        for (Happening each : fold.happenings()) {
            each.decision().breakMove().ifPresent(move -> {
                moments.add(new Moment.Away(each, move));
                decisions.merge(Kind.BREAK, 1, Integer::sum);
            });
            moments.add(new Moment.Decided(each));
            sessions += each.isSession() ? 1 : 0;
            if (each.isOverride() && !each.decision().isRefused()) {
                overrides++;
            } else {
                decisions.merge(each.decision().kind(), 1, Integer::sum);
            }
        }
        moments.sort(Comparator.comparing(Moment::date));
        return new History(fold, moments, decisions, sessions, overrides);
    }
}
