package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import rungwright.finding.Shown;
import rungwright.measure.BuiltIn;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.measure.Take;
import rungwright.measure.Values;
import rungwright.measure.WorkedOut;
import rungwright.spec.MeasureSpec;
import rungwright.spec.Spec;

/** What is asked of a trainee, in words: facts, measures, what is worked out of them. */
record AskedText(Wording wording, Words words) {
    /** {@code bands: a list of at most 6, each 4 to 60 kg by 0.5 kg}. */
    String of(Fact fact) {
        String each = values(fact.values());
        return fact.list().map(length -> list(length, Shown.text(fact.name()), each))
                .orElseGet(() -> words.say("asked", Shown.text(fact.name()), each));
    }

    private String list(Fact.Length length, String name, String each) {
        String most = Integer.toString(length.most());
        return length.least() == 0 ? words.say("asked.listAtMost", name, most, each)
                : words.say("asked.list", name, Integer.toString(length.least()), most, each);
    }

    private String values(Values values) {
        return new ValuesText(wording).of(values);
    }

    /** {@code reps: 0 to 40 in each set, of which the highest counts}, and the question. */
    String of(Measure measure) {
        String values = values(measure.values());
        List<String> parts = new ArrayList<>();
        parts.add(!measure.bySet() ? values : measure.take()
                .map(take -> words.say("asked.setTake", values, take(take)))
                .orElseGet(() -> words.say("asked.set", values)));
        measure.ifNotLogged().ifPresent(position -> parts.add(words.say("asked.otherwise", Shown.text(
                wording.asked(measure.name(), measure.values().show(position))))));
        return words.say("asked", Shown.text(measure.name()), String.join("; ", parts))
                + measure.ask().map(ask -> ". " + Shown.whole(ask)).orElse("");
    }

    private String take(Take take) {
        return words.say("take." + take.word());
    }

    /** {@code work time: not logged but worked out as reps * 4 s, set by set}. */
    String of(WorkedOut measure, Spec spec) {
        String name = Shown.text(measure.name());
        String how = spec.measures().stream()
                .filter(each -> each.name().value().strip().equals(measure.name())).findFirst()
                .map(this::formula).orElse("");
        if (!measure.bySet()) {
            return words.say("asked.worked", name, how);
        }
        return measure.take().map(take -> words.say("asked.workedTake", name, how, take(take)))
                .orElseGet(() -> words.say("asked.workedSet", name, how));
    }

    /** {@code days away: counted, the days since the last session}. */
    String of(BuiltIn counted) {
        return words.say("counted." + counted.word(), wording.name(counted.word()));
    }

    private String formula(MeasureSpec written) {
        String formula = written.from().map(text -> Shown.whole(text.value().strip())).orElse("");
        return written.ifNone().map(none -> words.say("asked.firstTime", formula,
                Shown.text(wording.language().amount(none.value())))).orElse(formula);
    }
}
