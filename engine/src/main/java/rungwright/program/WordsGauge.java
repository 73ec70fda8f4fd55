package rungwright.program;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.measure.Amount;
import rungwright.measure.Ratio;
import rungwright.measure.Words;

/** Named values, or yes and no: a value must be one of the names, and counts as its position. */
record WordsGauge(String name, Words values) implements Gauge {
    @Override
    public Optional<Ratio> read(String tidy, Place place, Troubles troubles) {
        OptionalLong position = values.read(tidy);
        if (position.isPresent()) {
            return Optional.of(Ratio.of(position.getAsLong()));
        }
        String hint = Suggest.closest(tidy, values.names()).map(word -> "did you mean `" + word + "`? ")
                .orElse("")
                + "it can be " + String.join(", ", values.names().stream().map(Shown::quoted).toList());
        return troubles.refuse(isPhrase(tidy) ? Code.BAD_VALUE : Code.UNKNOWN_NAME, place,
                Shown.quoted(tidy) + " is no value of " + Shown.quoted(name), hint);
    }

    /** Whether it is rather a phrase gone wrong than a wrong word: a number, or words before a right one. */
    private boolean isPhrase(String tidy) {
        return Amount.read(tidy).isPresent()
                || values.names().stream().anyMatch(word -> tidy.endsWith(" " + word));
    }

    @Override
    public boolean meets(Bounds bounds) {
        return Steps.of(values).within(bounds).isPresent();
    }

    @Override
    public List<String> words() {
        return values.names();
    }

    @Override
    public boolean isYesOrNo() {
        return values.isYesOrNo();
    }
}
