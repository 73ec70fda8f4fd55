package rungwright.step;

import java.util.Map;
import java.util.Optional;
import rungwright.program.Destination;
import rungwright.program.Destinations;
import rungwright.program.Rule;
import rungwright.program.Standing;
import rungwright.spec.RuleKind;

/**
 * What a rule comes to when it speaks in a session.
 *
 * @param progress how far it has got, where it wants several sessions
 * @param to where it leads
 */
record Ruling(Rule rule, Kind kind, Optional<Progress> progress, Destination to) {
    /**
     * That of a rule at a place; nothing where it leads to a place that is not there for the trainee, which
     * therefore never happens.
     *
     * @param tallies by label, as they were before the session
     */
    static Optional<Ruling> of(Rule rule, Destinations destinations, Standing at, Map<String, String> left,
            Map<String, Tally> tallies) {
        Destination here = new Destination.At(at);
        if (rule.kind() == RuleKind.STOP) {
            return Optional.of(new Ruling(rule, Kind.STOP, Optional.empty(), here));
        }
        Optional<Progress> progress = progress(rule, tallies);
        if (progress.filter(so -> !so.isComplete()).isPresent()) {
            return Optional.of(new Ruling(rule, Kind.HOLD, progress, here));
        }
        return destinations.of(rule, at, left).map(to ->
                new Ruling(rule, kind(rule.kind(), to.isGoal()), progress, to));
    }

    private static Optional<Progress> progress(Rule rule, Map<String, Tally> tallies) {
        if (rule.repeat().isOnce()) {
            return Optional.empty();
        }
        int before = Optional.ofNullable(tallies.get(rule.label())).map(Tally::met).orElse(0);
        return Optional.of(new Progress(before + 1, rule.repeat().met(), rule.repeat().of()));
    }

    private static Kind kind(RuleKind kind, boolean goal) {
        return switch (kind) {
            case ADVANCE -> goal ? Kind.REACHED : Kind.ADVANCE;
            case FALL_BACK -> Kind.FALL_BACK;
            case HOLD -> Kind.HOLD;
            case STOP -> Kind.STOP;
            case BREAK -> Kind.BREAK;
            case PLACE -> Kind.PLACED;
        };
    }

    /** Whether the rule did what it is for, rather than counted a session. */
    boolean fires() {
        return progress.map(Progress::isComplete).orElse(true);
    }
}
