package rungwright.program;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import rungwright.finding.Witness;
import rungwright.measure.Fact;

/** Puts the rung, and facts that a ladder hangs on, into a witness. */
final class LadderWitness {
    private LadderWitness() {
    }

    /** The same trainee on the easiest rung of the ladder. */
    static Witness bottom(Witness witness, Ladder ladder) {
        return at(witness, ladder, rungs -> rungs.get(0));
    }

    /** The same trainee on the hardest rung of the ladder. */
    static Witness top(Witness witness, Ladder ladder) {
        return at(witness, ladder, rungs -> rungs.get(rungs.size() - 1));
    }

    /** The same witness with other items in a list fact. */
    static Witness withItems(Witness witness, Fact fact, List<Long> items) {
        List<Witness.Reading> readings = new ArrayList<>();
        for (Witness.Reading reading : witness.readings()) {
            readings.add(reading.name().equals(fact.name())
                    ? Witness.Reading.of(fact.name(), items.stream().map(fact.values()::show).toList())
                    : reading);
        }
        return new Witness(witness.stage(), witness.rung(), readings);
    }

    private static Witness at(Witness witness, Ladder ladder, Function<List<Rung>, Rung> choice) {
        Optional<Facts> facts = ladder.fact().map(fact -> facts(witness, fact))
                .orElse(Optional.of(Facts.NONE));
        Optional<String> name = facts.map(ladder::rungs).filter(rungs -> !rungs.isEmpty()).map(choice)
                .map(Rung::name).filter(rung -> !rung.isEmpty());
        return new Witness(witness.stage(), name, witness.readings());
    }

    private static Optional<Facts> facts(Witness witness, Fact fact) {
        Map<Fact, List<Long>> known = new LinkedHashMap<>();
        witness.readings().stream().filter(reading -> reading.name().equals(fact.name()))
                .forEach(reading -> known.put(
                fact, reading.values().stream().map(value -> fact.values().read(value).orElseThrow())
                .toList()));
        return known.isEmpty() ? Optional.empty() : Optional.of(new Facts(known));
    }
}
