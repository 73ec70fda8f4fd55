package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.measure.Amount;
import rungwright.measure.Fact;
import rungwright.measure.Ratio;
import rungwright.region.Axis;
import rungwright.region.Interval;

/**
 * For which trainees a rung is not there: the positions of one fact's axis for which it is not, or may not
 * be.
 *
 * <p>A run of 20 kg to 75 % of body mass is not there at all under 26.7 kg of body mass; its rung {@code 60
 * kg} is not there under 80 kg.
 *
 * @param axis the fact's axis
 * @param positions where it is not there; at least one
 */
record Absence(Axis axis, List<Interval> positions) {
    /** Copies the positions. */
    Absence {
        positions = List.copyOf(positions);
    }

    /** Who has no rung on the ladder at all; nothing where everybody has one. */
    static Optional<Absence> ofLadder(Ladder ladder) {
        return ladder.fact().flatMap(fact -> ladder.match(new Ends(fact, Optional.empty())));
    }

    /** For whom the chosen rung is not there; nothing where it is there for everybody. */
    static Optional<Absence> of(Ladder ladder, RungChoice choice) {
        return choice instanceof RungChoice.Named named
                ? ladder.fact().flatMap(fact -> ladder.match(new Ends(fact,
                Optional.of(named.name()))))
                : ofLadder(ladder);
    }

    /** Works it out by the kind of ladder, for a rung's name or, without one, for the whole ladder. */
    private record Ends(Fact fact, Optional<String> rung) implements Ladder.Cases<Optional<Absence>> {
        @Override
        public Optional<Absence> named(Ladder.Named ladder) {
            return Optional.empty();
        }

        @Override
        public Optional<Absence> amounts(Ladder.Amounts ladder) {
            return Optional.empty();
        }

        @Override
        public Optional<Absence> run(Ladder.Run ladder) {
            Ratio wanted = rung.flatMap(Amount::read).flatMap(amount -> amount.in(ladder.unit()))
                    .orElse(ladder.start());
            Axis axis = FactAxes.of(fact);
            long low = 0;
            long high = axis.size();
            while (low < high) {
                long middle = (low + high) >>> 1;
                if (end(ladder, middle).compareTo(wanted) >= 0) {
                    high = middle;
                } else {
                    low = middle + 1;
                }
            }
            return low == 0 ? Optional.empty() : Optional.of(new Absence(axis, List.of(new Interval(0,
                    low))));
        }

        @Override
        public Optional<Absence> eachOf(Ladder.EachOf ladder) {
            Axis axis = FactAxes.of(fact);
            int least = fact.list().orElseThrow().least();
            List<Interval> positions = new ArrayList<>();
            for (long position = 0; position < axis.size(); position++) {
                if (OwnItemsWithout.find(ladder, (int) (least + position), rung).isPresent()) {
                    positions.add(Interval.at(position));
                }
            }
            return positions.isEmpty() ? Optional.empty() : Optional.of(new Absence(axis, positions));
        }

        private Ratio end(Ladder.Run ladder, long position) {
            Facts facts = new Facts(Map.of(fact, List.of(position)));
            return ladder.end().match(new Limits(facts, ladder.unit()));
        }
    }
}
