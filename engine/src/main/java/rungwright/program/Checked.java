package rungwright.program;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwright.finding.Finding;
import rungwright.spec.Spec;
import rungwright.yaml.Reading;
import rungwright.yaml.SpecReader;

/**
 * A spec that has been checked: what is wrong with it, and the program that it is where nothing is.
 *
 * @param outline the spec with its names resolved, as far as they could be
 * @param program the proven program; there exactly where no finding is an error
 * @param findings all that is wrong, from reading to the proof, by line, column and code
 */
public record Checked(Optional<Outline> outline, Optional<Program> program, List<Finding> findings) {
    /**
     * How many boxes the proof of a stage may look at where nobody says otherwise; 1,500 rules take about
     * 30,000.
     */
    public static final long USUAL_BUDGET = 5_000_000;

    /** Copies the findings. */
    public Checked {
        findings = List.copyOf(findings);
    }

    /** Reads and checks the text of a spec within the usual budget. */
    public static Checked read(String yaml) {
        return of(SpecReader.read(yaml), USUAL_BUDGET);
    }

    /** Checks a spec that was read; the proof of each stage and of each section may look at so many boxes. */
    public static Checked of(Reading reading, long budget) {
        return reading.spec().map(spec -> of(spec, reading.findings(), budget))
                .orElseGet(() -> new Checked(Optional.empty(), Optional.empty(), reading.findings()));
    }

    /** Checks a spec within the usual budget; {@code readingFindings} are what was wrong with its text. */
    public static Checked of(Spec spec, List<Finding> readingFindings) {
        return of(spec, readingFindings, USUAL_BUDGET);
    }

    /** Checks a spec; the proof of each stage and of each section may look at so many boxes. */
    public static Checked of(Spec spec, List<Finding> readingFindings, long budget) {
        Resolved resolved = Resolver.resolve(spec);
        List<Finding> proof = resolved.outline().map(outline -> Promise.findings(outline, budget))
                .orElse(List.of());
        List<Finding> trade = resolved.outline().map(outline -> TradeCheck.findings(spec, outline))
                .orElse(List.of());
        List<Finding> all = Stream.of(readingFindings, resolved.findings(), proof, trade)
                .flatMap(List::stream)
                .distinct().sorted().toList();
        boolean proven = all.stream().noneMatch(Finding::isError);
        return new Checked(resolved.outline(), resolved.outline().filter(outline -> proven).map(Program::new),
                all);
    }
}
