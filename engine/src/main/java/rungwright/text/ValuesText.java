package rungwright.text;

import rungwright.finding.Shown;
import rungwright.measure.Ratio;
import rungwright.measure.Scale;
import rungwright.measure.Values;

/** What a measure or fact can be: {@code 0 to 180 s}, {@code 4 to 60 kg by 0.5 kg}, {@code yes or no}. */
record ValuesText(Wording wording, boolean asTyped) implements Values.Cases<String> {
    /** As it is read. */
    ValuesText(Wording wording) {
        this(wording, false);
    }

    /** As it is typed, with a point in numbers whatever the language, since commas part a list. */
    static ValuesText typed(Wording wording) {
        return new ValuesText(wording, true);
    }

    String of(Values values) {
        return values.match(this);
    }

    @Override
    public String scale(Scale scale) {
        String range = scale.count() == 1 ? amount(scale.show(0)) : wording.rules().say("range",
                amount(scale.least().show()), amount(scale.show(scale.count() - 1)));
        boolean byOnes = scale.step().equals(Ratio.ONE) || scale.count() == 1;
        return byOnes ? range : wording.rules().say("rangeBy", range,
                amount(scale.unit().show(scale.step())));
    }

    private String amount(String written) {
        return asTyped ? written : wording.language().amount(written);
    }

    @Override
    public String words(rungwright.measure.Words words) {
        return words.isYesOrNo() ? wording.rules().say("yesOrNo")
                : Listed.or(words.names().stream().map(Shown::text).toList(), wording.rules());
    }
}
