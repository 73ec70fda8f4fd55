package rungwright.step;

import java.util.stream.Collectors;
import rungwright.finding.Shown;
import rungwright.measure.Ratio;
import rungwright.measure.Scale;
import rungwright.measure.Values;
import rungwright.measure.Words;

/** What a measure can be, as a spec writes it: {@code 0 to 200 kg by 0.5}, {@code yes or no}. */
final class ValueWords implements Values.Cases<String> {
    static String of(Values values) {
        return values.match(new ValueWords());
    }

    @Override
    public String scale(Scale scale) {
        String step = scale.step().equals(Ratio.ONE) ? "" : " by " + scale.step().show();
        return scale.least().show() + " to " + scale.unit().show(scale.greatest()) + step;
    }

    @Override
    public String words(Words words) {
        return words.isYesOrNo()
                ? "yes or no"
                : words.names().stream().map(Shown::quoted).collect(Collectors.joining(", "));
    }
}
