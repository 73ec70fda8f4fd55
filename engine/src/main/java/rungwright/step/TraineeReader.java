package rungwright.step;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.measure.Values;
import rungwright.program.Facts;

/** Reads a trainee's facts and assessments by one program; the trainee it gives back is written its way. */
final class TraineeReader {
    private final Plan plan;
    private final Map<Fact, List<Long>> facts = new LinkedHashMap<>();
    private final Map<String, List<String>> factTexts = new LinkedHashMap<>();
    private final Map<String, String> assessmentTexts = new LinkedHashMap<>();
    private final long[] assessment;

    private TraineeReader(Plan plan) {
        this.plan = plan;
        this.assessment = new long[plan.names().assessments().size()];
    }

    static Trainee read(Plan plan, Trainee trainee) throws Refused {
        TraineeReader reader = new TraineeReader(plan);
        refuseUnknown("fact", trainee.facts().keySet(), plan.names().facts());
        refuseUnknown("assessment", trainee.assessment().keySet(), plan.names().assessments());
        for (Fact fact : plan.names().facts().all()) {
            List<String> items = trainee.facts().get(fact.name());
            if (items == null) {
                throw Refusals.missingFact(fact.name());
            }
            reader.fact(fact, items);
        }
        for (int i = 0; i < reader.assessment.length; i++) {
            Measure asked = plan.names().assessments().get(i);
            reader.assessment(i, asked, trainee.assessment().getOrDefault(asked.name(), ""));
        }
        return reader.trainee();
    }

    private static void refuseUnknown(String what, Set<String> given, Index<?> known) throws Refused {
        for (String name : new TreeSet<>(given)) {
            if (known.number(name) == Index.NONE) {
                throw Refusals.unknownName(what, name, known.names());
            }
        }
    }

    private void fact(Fact fact, List<String> items) throws Refused {
        int least = fact.list().map(Fact.Length::least).orElse(1);
        int most = fact.list().map(Fact.Length::most).orElse(1);
        if (items.size() < least || items.size() > most) {
            throw Refusals.wrongNumber(fact, items.size());
        }
        List<Long> positions = new ArrayList<>();
        for (String item : items) {
            positions.add(read(fact.name(), fact.values(), item));
        }
        positions.sort(Collections.reverseOrder());
        facts.put(fact, positions);
        factTexts.put(fact.name(), positions.stream().map(fact.values()::show).toList());
    }

    private void assessment(int number, Measure asked, String text) throws Refused {
        if (!text.isBlank()) {
            assessment[number] = read(asked.name(), asked.values(), text);
            assessmentTexts.put(asked.name(), asked.values().show(assessment[number]));
        } else if (asked.ifNotLogged().isPresent()) {
            assessment[number] = asked.ifNotLogged().getAsLong();
        } else {
            throw Refusals.missingAssessment(asked);
        }
    }

    private static long read(String name, Values values, String text) throws Refused {
        OptionalLong position = values.read(text);
        if (position.isEmpty()) {
            throw Refusals.wrongValue(name, text, values);
        }
        return position.getAsLong();
    }

    private Trainee trainee() {
        return Trainee.of(factTexts, assessmentTexts).with(new Fit(plan, new Facts(facts), assessment));
    }
}
