package rungwright.trial;

import java.util.List;
import java.util.Optional;
import rungwright.finding.Place;
import rungwright.spec.CaseSpec;

/**
 * What became of faults that were planted in a spec, one at a time.
 *
 * @param results each fault in the order of the text
 */
public record FaultReport(List<Result> results) {
    /** Copies the results. */
    public FaultReport {
        results = List.copyOf(results);
    }

    /** What can become of a fault. */
    public enum Fate {
        /** The spec with the fault cannot be proven, so nobody can train by it. */
        REFUSED("refused by the proof"),
        /** Some case fails. */
        NOTICED("noticed by a case"),
        /** The spec with the fault is proven to decide the same everywhere. */
        SAME("no fault at all"),
        /** No case fails, and there are sessions at which one would. */
        UNNOTICED("not noticed"),
        /** It is other in states that could be stored, but no run of events was found that leads there. */
        UNREACHED("out of reach of any case that was found");

        private final String words;

        Fate(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /**
     * One fault.
     *
     * @param words what was done to the spec
     * @param by the name of the first case that failed, where one did
     * @param example for one that no case noticed, a case that would
     */
    public record Result(String words, Place place, Fate fate, Optional<String> by,
            Optional<CaseSpec> example) {
    }

    /** The faults of one fate. */
    public List<Result> of(Fate fate) {
        return results.stream().filter(result -> result.fate() == fate).toList();
    }
}
