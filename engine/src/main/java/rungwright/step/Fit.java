package rungwright.step;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwright.measure.Measure;
import rungwright.program.Destinations;
import rungwright.program.Facts;

/** What one program reads of a trainee: facts and assessments as positions, and where targets lead. */
final class Fit {
    private final Plan plan;
    private final long[] facts;
    private final long[] assessment;
    private final Destinations destinations;

    Fit(Plan plan, Facts facts, long[] assessment) {
        this.plan = plan;
        this.facts = plan.names().facts().all().stream()
                .mapToLong(fact -> fact.isList() ? facts.items(fact).size() : facts.value(fact)).toArray();
        this.assessment = assessment.clone();
        this.destinations = Destinations.of(plan.ladders(), facts, byMeasure(), () -> plan.start(this));
    }

    private Map<Measure, Long> byMeasure() {
        List<Measure> asked = plan.names().assessments().all();
        Map<Measure, Long> positions = new LinkedHashMap<>();
        for (int i = 0; i < assessment.length; i++) {
            positions.put(asked.get(i), assessment[i]);
        }
        return positions;
    }

    Plan plan() {
        return plan;
    }

    /** The position of a fact's value; of a list, its number of items. */
    long fact(int number) {
        return facts[number];
    }

    /** The position of an assessment's value. */
    long assessment(int number) {
        return assessment[number];
    }

    Destinations destinations() {
        return destinations;
    }
}
