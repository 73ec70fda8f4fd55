package rungwright.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class MeaningTest {
    private static final String SPEC = """
            trainee:
              mass: { values: 30 to 100 kg }
            measures:
              reps: { values: 0 to 60, each: set, take: highest, ask: How many? }
              load: { values: 0 to 60 kg }
              work: { from: reps * 4 s }
              gain: { from: load - previous load, if none: 0 kg }
            ladders:
              bars: { rungs: [15 kg, 20 kg] }
            place:
              assess: { best: { values: 0 to 60 kg } }
              rules:
                - { when: { best: under 20 }, to: stage press }
                - { when: { best: at least 20 }, to: stage press on the highest rung up to best }
            stages:
              press:
                ladder: bars
                do: { sets: 3 }
                advance:
                  - { when: { reps: at least 12, work: at least 40 s, load: at least 40 % of mass },
                  in a row: 2 }
                  - { name: Much, when: { gain: over 5 } }
                hold: { when: { reps: under 12, sessions here: under 4 } }
            """;

    private static final String ITS_OWN = Fingerprint.of(Specs.outline(SPEC));

    private static String fingerprint(String from, String to) {
        assertTrue(SPEC.contains(from), from);
        return Fingerprint.of(Specs.outline(SPEC.replace(from, to)));
    }

    @Test
    void layoutCommentsOrderAndWordsForPeopleDoNotMatter() {
        assertEquals(ITS_OWN, fingerprint("ask: How many?", "ask: How often?"));
        assertEquals(ITS_OWN, fingerprint("stages:\n", "# the stages\nstages:\n"));
        assertEquals(ITS_OWN, fingerprint("do: { sets: 3 }", "do: { sets: 4 }"));
        assertEquals(ITS_OWN, fingerprint("reps: at least 12, work: at least 40 s",
                "work: at least 40 s, reps: at least 12"));
        assertEquals(ITS_OWN, fingerprint("at least 40 s", "at least 40.0"));
        assertEquals(ITS_OWN, fingerprint("under 12, s", "at most 11, s"));
    }

    @Test
    void theOrderOfKindsDoesNotMatter() {
        String hold = "    hold: { when: { reps: under 12, sessions here: under 4 } }\n";
        String moved = SPEC.replace(hold, "").replace("    advance:\n", hold + "    advance:\n");
        assertNotEquals(SPEC, moved);
        assertEquals(ITS_OWN, Fingerprint.of(Specs.outline(moved)));
    }

    @Test
    void whatDecidesMatters() {
        assertNotEquals(ITS_OWN, fingerprint("at least 40 s", "over 40 s"));
        assertNotEquals(ITS_OWN, fingerprint("at least 40 %", "at least 41 %"));
        assertNotEquals(ITS_OWN, fingerprint("reps * 4 s", "reps * 5 s"));
        assertNotEquals(ITS_OWN, fingerprint("if none: 0 kg", "if none: 1 kg"));
        assertNotEquals(ITS_OWN, fingerprint("in a row: 2", "within: 2 of 3"));
        assertNotEquals(ITS_OWN, fingerprint("20 kg]", "21 kg]"));
        assertNotEquals(ITS_OWN, fingerprint("take: highest", "take: lowest"));
        assertNotEquals(ITS_OWN, fingerprint("highest rung up to best", "top rung"));
        assertNotEquals(ITS_OWN, fingerprint("0 to 60 kg }\n  work", "0 to 61 kg }\n  work"));
    }

    @Test
    void aRuleMeansTheSameWhateverOtherRulesAskAbout() {
        Rule before = Specs.outline(SPEC).stages().get(0).rules().get(0);
        Rule after = Specs.outline(SPEC.replace("{ gain: over 5 }",
                "{ gain: over 5, work: over 10 s, load: 10 % of mass, sessions here: 30 }")).stages().get(0)
                .rules()
                .get(0);
        assertNotEquals(before.when(), after.when());
        assertEquals(Meaning.rule(before), Meaning.rule(after));
        Rule hold = Specs.outline(SPEC).stages().get(0).rules().get(2);
        Rule longer = Specs.outline(SPEC.replace("{ gain: over 5 }", "{ sessions here: 30 }")).stages().get(0)
                .rules().get(2);
        assertEquals(Meaning.rule(hold), Meaning.rule(longer));
    }
}
