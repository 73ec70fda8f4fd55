package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import rungwright.finding.Shown;
import rungwright.measure.BuiltIn;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.measure.WorkedOut;
import rungwright.spec.MeasureSpec;
import rungwright.spec.Spec;

/** What is asked of a trainee, in words: facts, measures, what is worked out of them. */
final class AskedText {
    private AskedText() {
    }

    /** {@code bands: a list of at most 6, each 4 to 60 kg by 0.5 kg}. */
    static String of(Fact fact) {
        String each = ValuesText.of(fact.values());
        return Shown.text(fact.name()) + ": " + fact.list()
                .map(length -> "a list of " + (length.least() == 0 ? "at most " + length.most()
                        : length.least() + " to " + length.most()) + ", each " + each).orElse(each);
    }

    /** {@code reps: 0 to 40 in each set, of which the highest counts}, and the question. */
    static String of(Measure measure) {
        List<String> parts = new ArrayList<>();
        parts.add(ValuesText.of(measure.values()) + (measure.bySet() ? " in each set" + measure.take()
                .map(take -> ", of which the " + take.word() + " counts").orElse("") : ""));
        measure.ifNotLogged().ifPresent(position ->
                parts.add("if not logged, " + Shown.text(measure.values().show(position))));
        return Shown.text(measure.name()) + ": " + String.join("; ", parts)
                + measure.ask().map(ask -> ". " + Shown.whole(ask)).orElse("");
    }

    /** {@code work time: not logged but worked out as reps * 4 s, set by set}. */
    static String of(WorkedOut measure, Spec spec) {
        String how = spec.measures().stream()
                .filter(each -> each.name().value().strip().equals(measure.name())).findFirst()
                .map(AskedText::formula).orElse("");
        String sets = measure.bySet() ? ", set by set" + measure.take()
                .map(take -> ", of which the " + take.word() + " counts").orElse("") : "";
        return Shown.text(measure.name()) + ": not logged but worked out as " + how + sets;
    }

    /** {@code days away: counted, the days since the last session}. */
    static String of(BuiltIn counted) {
        return counted.word() + ": counted, the " + switch (counted) {
            case SETS_LOGGED -> "sets of the session";
            case SESSIONS_HERE -> "sessions in this stage and on this rung, this one included";
            case DAYS_HERE -> "days since they came to this stage and rung";
            case DAYS_AWAY -> "days since the last session";
        };
    }

    private static String formula(MeasureSpec written) {
        return written.from().map(text -> Shown.whole(text.value().strip())).orElse("")
                + written.ifNone().map(none -> " (" + Shown.text(none.value()) + " the first time)")
                        .orElse("");
    }
}
