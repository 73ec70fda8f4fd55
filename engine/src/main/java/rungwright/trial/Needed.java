package rungwright.trial;

import java.util.List;
import java.util.Optional;
import rungwright.finding.Place;
import rungwright.program.Program;
import rungwright.program.Rule;
import rungwright.spec.RuleKind;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.Glance;
import rungwright.step.Glances;
import rungwright.step.Kind;
import rungwright.step.NearMiss;
import rungwright.step.Reason;
import rungwright.step.State;

/** Why a session did not come to what a case expects. */
record Needed(Program program, State before, Event event, Decision decision) {
    Failure failure(int number, Place place, Wanted wanted) {
        Optional<Kind> kind = wanted.last().kind();
        Optional<NearMiss> nearest = kind.filter(other -> other != decision.kind())
                .flatMap(other -> decision.nearest().stream().filter(miss -> miss.kind() == other)
                .findFirst());
        return new Failure(number, event.date(), place, wanted.text(), decision, reasons(wanted.last()),
                nearest);
    }

    /** What the rules that are expected asked, where they came closest, that was not so. */
    private List<Reason> reasons(Wanted.Part part) {
        if (!(event instanceof Event.Session session)) {
            return List.of();
        }
        return Glances.of(program, before, session).session().stream()
                .flatMap(glance -> glance.rules().stream().filter(rule -> isMeant(rule, part))
                        .flatMap(rule -> unmet(glance, rule).stream())).distinct().toList();
    }

    private boolean isMeant(Rule rule, Wanted.Part part) {
        boolean spoke = decision.rule().filter(ref -> ref.label().equals(rule.label())).isPresent();
        boolean named = part.rule().filter(rule.label()::equals).isPresent();
        return !spoke && (named || part.kind().filter(kind -> kind != decision.kind())
                .filter(kind -> kind == kind(rule.kind())
                || kind == Kind.REACHED && rule.kind() == RuleKind.ADVANCE).isPresent());
    }

    private static Kind kind(RuleKind kind) {
        return switch (kind) {
            case ADVANCE -> Kind.ADVANCE;
            case FALL_BACK -> Kind.FALL_BACK;
            case HOLD -> Kind.HOLD;
            case STOP -> Kind.STOP;
            case BREAK -> Kind.BREAK;
            case PLACE -> Kind.PLACED;
        };
    }

    private static List<Reason> unmet(Glance glance, Rule rule) {
        return rule.when().otherwise() ? List.of()
                : glance.reasons(rule).stream().filter(reason -> !reason.met()).toList();
    }
}
