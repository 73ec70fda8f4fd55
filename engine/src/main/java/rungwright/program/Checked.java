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
    /** Copies the findings. */
    public Checked {
        findings = List.copyOf(findings);
    }

    /** Reads and checks the text of a spec. */
    public static Checked read(String yaml) {
        Reading reading = SpecReader.read(yaml);
        return reading.spec().map(spec -> of(spec, reading.findings()))
                .orElseGet(() -> new Checked(Optional.empty(), Optional.empty(), reading.findings()));
    }

    /** Checks a spec; {@code readingFindings} are what was wrong with its text. */
    public static Checked of(Spec spec, List<Finding> readingFindings) {
        Resolved resolved = Resolver.resolve(spec);
        List<Finding> proof = resolved.outline().map(Promise::findings).orElse(List.of());
        List<Finding> all = Stream.of(readingFindings, resolved.findings(), proof).flatMap(List::stream)
                .distinct().sorted().toList();
        boolean proven = all.stream().noneMatch(Finding::isError);
        return new Checked(resolved.outline(), resolved.outline().filter(outline -> proven).map(Program::new),
                all);
    }
}
