package rungwright.program;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import rungwright.finding.Finding;
import rungwright.spec.Spec;
import rungwright.yaml.SpecReader;

/** Specs made of the sections that a test is about. */
final class Specs {
    private static final String HEAD = """
            program: Tow the dummy
            version: 1
            goal: Tow the dummy over 25 m
            """;

    private Specs() {
    }

    /** A spec as text: the head, then the sections, ended by the advance of a stage {@code tuck}. */
    static String text(String sections, String advance) {
        return HEAD + sections + "stages:\n  tuck:\n    advance: " + advance + "\n";
    }

    /** The outline of sections whose names and values are right. */
    static Outline outline(String sections) {
        Resolved resolved = Resolver.resolve(spec(HEAD + sections));
        assertEquals(List.of(), resolved.findings().stream().filter(Finding::isError).toList());
        return resolved.outline().orElseThrow();
    }

    /** The outline of a spec with one stage that advances so. */
    static Outline outline(String sections, String advance) {
        return outline(text(sections, advance).substring(HEAD.length()));
    }

    /** The only rule of a spec with one stage that advances so. */
    static Rule rule(String sections, String advance) {
        return outline(sections, advance).stages().get(0).rules().get(0);
    }

    /** The only criterion of an advance. */
    static Criterion criterion(String sections, String criterion) {
        return rule(sections, "{ when: { " + criterion + " } }").when().anyOf().get(0).get(0);
    }

    /** What resolving finds in sections behind the head. */
    static List<Finding> findings(String sections) {
        return Resolver.resolve(spec(HEAD + sections)).findings();
    }

    private static Spec spec(String text) {
        return SpecReader.read(text).spec().orElseThrow();
    }
}
