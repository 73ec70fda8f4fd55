package rungwright.program;

import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.measure.Ratio;

/** The value of {@code the highest rung up to VALUE}, or the end of a numeric run. */
public sealed interface Limit {
    /** Answers by the kind of limit. */
    <R> R match(Cases<R> cases);

    /** An amount, in base units. */
    record Fixed(Ratio amount) implements Limit {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.fixed(this);
        }
    }

    /** A share of a fact: 75 % of body mass has the factor 3/4. */
    record Share(Ratio factor, Fact fact) implements Limit {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.share(this);
        }
    }

    /** What the trainee's latest assessment gave. */
    record Assessed(Measure assessment) implements Limit {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.assessed(this);
        }
    }

    /** One method a kind. */
    interface Cases<R> {
        /** An amount. */
        R fixed(Fixed limit);

        /** A share of a fact. */
        R share(Share limit);

        /** An assessment. */
        R assessed(Assessed limit);
    }
}
