package rungwright.step;

import java.util.ArrayList;
import java.util.List;
import rungwright.measure.Quantity;
import rungwright.program.Criterion;
import rungwright.program.Demand;
import rungwright.program.Rule;

/** Works out why a rule spoke: what it asked, and what there was. */
final class Reasons {
    private final Judge judge;
    private final Seen seen;

    private Reasons(Judge judge, Seen seen) {
        this.judge = judge;
        this.seen = seen;
    }

    /**
     * The criteria that a rule of a list found met; for an {@code otherwise}, those that every other rule of
     * the list found not met, where it came closest.
     */
    static List<Reason> of(Judge judge, Rule rule, Seen seen) {
        Reasons reasons = new Reasons(judge, seen);
        if (!rule.when().otherwise()) {
            return reasons.closest(rule);
        }
        return judge.rules().stream().filter(other -> other != rule)
                .flatMap(other -> reasons.closest(other).stream().filter(reason -> !reason.met())).toList();
    }

    /** The criteria of the alternative of which the fewest are not met, the first of several such. */
    private List<Reason> closest(Rule rule) {
        List<Reason> best = List.of();
        long fewest = Long.MAX_VALUE;
        for (List<Criterion> allOf : rule.when().anyOf()) {
            List<Reason> reasons = allOf.stream().map(criterion -> reason(rule, criterion)).toList();
            long unmet = reasons.stream().filter(reason -> !reason.met()).count();
            if (unmet < fewest) {
                fewest = unmet;
                best = reasons;
            }
        }
        return best;
    }

    private Reason reason(Rule rule, Criterion criterion) {
        boolean met = criterion.anyOf().stream().anyMatch(demands -> demands.stream().allMatch(this::isMet));
        return new Reason(rule.label(), criterion.name(), criterion.phrase(), logged(criterion), met);
    }

    private boolean isMet(Demand demand) {
        return demand.interval().contains(demand.axis().match(judge.sight()).position(seen));
    }

    private String logged(Criterion criterion) {
        List<Quantity> asked = new ArrayList<>();
        criterion.anyOf().forEach(demands -> demands.forEach(demand -> asked.add(demand.axis().quantity())));
        List<Quantity> quantities = asked.stream().distinct().toList();
        Readout readout = new Readout(judge.sight(), seen);
        return quantities.size() == 1
                ? quantities.get(0).match(readout)
                : quantities.get(0).match(new SetReadout(readout));
    }
}
