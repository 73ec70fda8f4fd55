package rungwright.program;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungwright.spec.RuleKind;

/**
 * The runs of sessions that a trainee of a group can have in one place from the day they come to it, as far
 * as the number of sessions and the rows and windows of rules tell them apart: which rules can move them on
 * in the end.
 *
 * <p>A row is counted exactly. A window is kept exactly up to {@link #LONGEST_WINDOW} sessions; in a longer
 * one a session that met it is taken to count for ever.
 */
final class PlaceRun {
    private static final int LONGEST_WINDOW = 8;

    private final Footing spot;
    private final StageGuards stage;
    private final TraineeGroup group;
    private final FootingMap map;
    private final Set<Rule> leaving = new LinkedHashSet<>();
    private final Set<Moment> seen = new HashSet<>();
    private final Deque<Moment> open = new ArrayDeque<>();

    private PlaceRun(Footing spot, StageGuards stage, TraineeGroup group, FootingMap map) {
        this.spot = spot;
        this.stage = stage;
        this.group = group;
        this.map = map;
    }

    /**
     * What is known before a session: its number here, the row under way, and for each window who met it,
     * latest first.
     */
    private record Moment(int number, Optional<Rule> row, int count, List<Met> windows) {
    }

    /** The latest sessions here, as those that met a rule's window, the latest one first. */
    private record Met(Rule rule, List<Boolean> latest) {
    }

    /** The rules, stops aside, that can move a trainee out of the spot. */
    static Set<Rule> leaving(Footing spot, StageGuards stage, TraineeGroup group, FootingMap map) {
        PlaceRun run = new PlaceRun(spot, stage, group, map);
        run.follow();
        return run.leaving;
    }

    private void follow() {
        see(new Moment(1, Optional.empty(), 0, List.of()));
        while (!open.isEmpty()) {
            Moment moment = open.pop();
            for (Rule rule : stage.deciding(group, moment.number())) {
                if (rule.kind() != RuleKind.STOP) {
                    decide(moment, rule);
                }
            }
        }
    }

    private void decide(Moment moment, Rule rule) {
        boolean inRow = rule.repeat().row() && !rule.repeat().isOnce();
        int count = inRow ? 1 + (moment.row().filter(rule::equals).isPresent() ? moment.count() : 0) : 0;
        List<Met> windows = slide(moment.windows(), rule);
        boolean fires = rule.repeat().isOnce() || (inRow ? count >= rule.repeat().met() : isMet(windows,
                rule));
        if (fires && !map.keeps(spot, rule)) {
            leaving.add(rule);
            if (!map.mayKeep(spot, rule)) {
                return;
            }
        }
        boolean counting = inRow && !fires;
        see(new Moment(Math.min(moment.number() + 1, stage.sessions()), counting ? Optional.of(rule)
                : Optional.empty(),
                counting ? count : 0, windows));
    }

    private void see(Moment moment) {
        if (seen.add(moment)) {
            open.push(moment);
        }
    }

    private static boolean isMet(List<Met> windows, Rule rule) {
        return windows.stream().filter(met -> met.rule().equals(rule))
                .anyMatch(met -> met.latest().stream().filter(Boolean::booleanValue).count() >= rule.repeat()
                .met());
    }

    /** The windows after one more session that the rule decided. */
    private static List<Met> slide(List<Met> windows, Rule rule) {
        List<Met> after = new ArrayList<>();
        boolean known = false;
        for (Met met : windows) {
            boolean same = met.rule().equals(rule);
            known |= same;
            Met slid = new Met(met.rule(), latest(met.latest(), same, met.rule().repeat()));
            if (slid.latest().contains(true)) {
                after.add(slid);
            }
        }
        if (!known && !rule.repeat().row()) {
            after.add(new Met(rule, latest(List.of(), true, rule.repeat())));
        }
        return List.copyOf(after);
    }

    private static List<Boolean> latest(List<Boolean> before, boolean met, Repeat repeat) {
        if (repeat.of() > LONGEST_WINDOW) {
            return met && before.size() < repeat.met() ? Collections.nCopies(before.size() + 1, true)
                    : before;
        }
        List<Boolean> after = new ArrayList<>(before);
        after.add(0, met);
        return List.copyOf(after.subList(0, Math.min(after.size(), repeat.of())));
    }
}
