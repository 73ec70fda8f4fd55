package rungwright.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.program.Program;
import rungwright.spec.CaseSpec;
import rungwright.yaml.CasesReader;
import rungwright.yaml.CasesReading;

/**
 * The cases of one file, read for one program, and all that is wrong with them.
 *
 * <p>{@code Cases.read(program, text)} of a file that logs {@code rops: 9} has the finding
 * {@code unknown-name} at that word, and that case is left out.
 *
 * @param cases those with which nothing is wrong
 * @param findings what is wrong, by line, column and code
 */
public record Cases(List<Case> cases, List<Finding> findings) {
    /** Copies the lists. */
    public Cases {
        cases = List.copyOf(cases);
        findings = List.copyOf(findings);
    }

    /** Reads the text of a cases file. */
    public static Cases read(Program program, String text) {
        return of(program, CasesReader.read(text));
    }

    /** Reads what came of reading a cases file. */
    public static Cases of(Program program, CasesReading reading) {
        CaseMaker maker = new CaseMaker(program);
        List<Case> cases = new ArrayList<>();
        Map<String, Place> names = new LinkedHashMap<>();
        for (CaseSpec spec : reading.cases()) {
            Optional<Case> made = maker.make(spec);
            Place first = names.putIfAbsent(Places.tidy(spec.name().value()), spec.name().place());
            if (first != null) {
                maker.add(Finding.of(Code.DUPLICATE_NAME, spec.name().place(),
                        "two cases are named " + Shown.quoted(spec.name().value()))
                        .withHint("give each case a name of its own")
                        .withRelated(first, "the first of them"));
            } else {
                made.ifPresent(cases::add);
            }
        }
        List<Finding> all = new ArrayList<>(reading.findings());
        all.addAll(maker.findings());
        return new Cases(cases, all.stream().distinct().sorted().toList());
    }
}
