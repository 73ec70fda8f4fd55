package rungwright.text;

import java.util.List;
import rungwright.finding.Shown;
import rungwright.measure.Ratio;
import rungwright.measure.Scale;
import rungwright.measure.Values;
import rungwright.measure.Words;

/** What a measure or fact can be: {@code 0 to 180 s}, {@code 4 to 60 kg by 0.5 kg}, {@code yes or no}. */
final class ValuesText implements Values.Cases<String> {
    private static final ValuesText WORDS = new ValuesText();

    private ValuesText() {
    }

    static String of(Values values) {
        return values.match(WORDS);
    }

    @Override
    public String scale(Scale scale) {
        String range = scale.count() == 1 ? scale.show(0)
                : scale.least().show() + " to " + scale.show(scale.count() - 1);
        boolean byOnes = scale.step().equals(Ratio.ONE) || scale.count() == 1;
        return range + (byOnes ? "" : " by " + scale.unit().show(scale.step()));
    }

    @Override
    public String words(Words words) {
        return words.isYesOrNo() ? "yes or no" : Listed.or(escaped(words.names()));
    }

    private static List<String> escaped(List<String> names) {
        return names.stream().map(Shown::text).toList();
    }
}
