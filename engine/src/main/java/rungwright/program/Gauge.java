package rungwright.program;

import java.util.List;
import java.util.Optional;
import rungwright.finding.Place;
import rungwright.measure.Ratio;
import rungwright.measure.Scale;
import rungwright.measure.Values;
import rungwright.measure.Words;

/** How the values of something that rules ask about are written, and which of them it can have. */
interface Gauge {
    /** The gauge of values on a grid. */
    static Gauge of(String name, Values values) {
        return values.match(new Values.Cases<>() {
            @Override
            public Gauge scale(Scale scale) {
                return new ScaleGauge(name, scale);
            }

            @Override
            public Gauge words(Words words) {
                return new WordsGauge(name, words);
            }
        });
    }

    /** The number in base units that a text stands for, or nothing after saying what is wrong with it. */
    Optional<Ratio> read(String tidy, Place place, Troubles troubles);

    /** Whether it can have a value between two edges. */
    boolean meets(Bounds bounds);

    /** The words that it can be; empty for numbers. */
    default List<String> words() {
        return List.of();
    }

    /** Whether it is answered with yes or no. */
    default boolean isYesOrNo() {
        return false;
    }
}
