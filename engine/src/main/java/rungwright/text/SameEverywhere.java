package rungwright.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.compare.Comparison;
import rungwright.compare.Difference;
import rungwright.compare.Rungs;
import rungwright.program.Stage;
import rungwright.region.Moment;

/**
 * Differences that are the same in several stages, as those of a stop rule are: said once.
 *
 * @param first the difference in the first of the stages
 * @param stages all of them by name; none for what is said of no stage
 */
record SameEverywhere(Difference first, List<String> stages) {
    /** All differences in their order, those that are the same as an earlier one with that one. */
    static List<SameEverywhere> of(Comparison comparison) {
        Map<List<Object>, SameEverywhere> said = new LinkedHashMap<>();
        for (Difference difference : comparison.differences()) {
            Key key = new Key(comparison, difference);
            List<Object> same = difference.match(key);
            SameEverywhere known = said.get(same);
            said.put(same, known == null ? new SameEverywhere(difference, key.stage().stream().toList())
                    : known.and(key.stage().orElseThrow()));
        }
        return List.copyOf(said.values());
    }

    private SameEverywhere and(String stage) {
        List<String> more = new ArrayList<>(stages);
        more.add(stage);
        return new SameEverywhere(first, more);
    }

    /** What two differences have in common that are said once. */
    private record Key(Comparison comparison,
            Difference difference) implements Difference.Cases<List<Object>> {
        Optional<String> stage() {
            return difference instanceof Difference.Decided decided ? decided.where().stage()
                    : Optional.empty();
        }

        @Override
        public List<Object> decided(Difference.Decided decided) {
            boolean session = decided.where().moment() == Moment.SESSION;
            return session && isAnyRung(decided) ? List.of(decided.regions(), decided.whole(),
                    decided.before().rule(), decided.after().rule(), decided.witness().isPresent())
                    : List.of(decided);
        }

        private boolean isAnyRung(Difference.Decided decided) {
            return comparison.changed().outline().stages().stream()
                    .filter(each -> decided.where().stage().equals(Optional.of(each.name())))
                    .map(Stage::ladder).allMatch(ladder -> decided.where().rungs()
                    .containsAll(Rungs.in(ladder)));
        }

        @Override
        public List<Object> changed(Difference.Changed changed) {
            return List.of(changed);
        }

        @Override
        public List<Object> unsettled(Difference.Unsettled unsettled) {
            return List.of(unsettled);
        }
    }
}
