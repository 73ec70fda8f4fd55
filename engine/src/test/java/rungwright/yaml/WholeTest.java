package rungwright.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.spec.RuleSpec;
import rungwright.spec.Spec;
import rungwright.spec.StageSpec;
import rungwright.spec.Text;

/** What is kept of a spec with mistakes in it, and which parts say that they are not whole. */
class WholeTest {
    private static final String HEAD = """
            program: Pool entry
            version: 1
            goal: Tow a casualty
            measures: { reps: { values: 0 to 60 }, hold: { values: 0 to 300 s } }
            """;
    private static final String STAGES = """
            stages:
              tuck: { advance: { when: { reps: at least 12 } }, hold: otherwise }
            """;

    private static Spec read(String text) {
        return SpecReader.read(text).spec().orElseThrow();
    }

    private static List<Boolean> whole(Spec spec) {
        return spec.stages().stream().map(StageSpec::whole).toList();
    }

    @Test
    void aMissingTextIsEmptyAndStandsWhereTheMapStands() {
        Spec spec = read("# a note\nversion: 1\n");
        assertEquals(new Text("", new Place(2, 1)), spec.program());
        assertEquals(new Text("", new Place(2, 1)), spec.goal());
        assertEquals("1", spec.version().value());
        assertFalse(spec.whole());
    }

    @Test
    void aKeyNotReadInOneStageSaysNothingOfTheNextOrOfTheSpec() {
        Spec spec = read(HEAD + """
                stages:
                  tuck: { climb: { when: { reps: at least 12 } }, hold: otherwise }
                  lift: { advance: { when: { reps: at least 12 } }, hold: otherwise }
                """);
        assertEquals(List.of(false, true), whole(spec));
        assertTrue(spec.whole());
    }

    @Test
    void aKeyWithASlipIsReadAsTheKeyThatIsMeant() {
        String right = HEAD + "stages: { tuck: { advance: { when: { reps: 12 } }, hold: otherwise } }\n";
        Reading slip = SpecReader.read(right.replace("advance", "avdance"));
        assertEquals(List.of("unknown-key"),
                slip.findings().stream().map(finding -> finding.code().word()).toList());
        assertEquals(read(right).stages(), slip.spec().orElseThrow().stages());
    }

    @Test
    void whatIsDoneAndSaidDecidesNothing() {
        Reading reading = SpecReader.read(HEAD + """
                stages:
                  tuck:
                    do: { sets: [3], wait: 3 }
                    advance: { when: { reps: at least 12 }, say: [Up] }
                    hold: { when: otherwise, to: start }
                """);
        assertEquals(4, reading.findings().size());
        assertEquals(List.of(true), whole(reading.spec().orElseThrow()));
        assertTrue(reading.spec().orElseThrow().whole());
    }

    @Test
    void aCriterionNotReadIsSaidByItsOwnConditionAlone() {
        Spec spec = read(HEAD + """
                stages:
                  tuck:
                    advance: { when: { reps: >= 12, hold: over 5 s } }
                    fall back: { when: { reps: [] } }
                    hold: { when: { reps: 3 } }
                """);
        List<RuleSpec> rules = spec.stages().get(0).rules();
        assertEquals(List.of(false, false, true), rules.stream().map(rule -> rule.when().whole()).toList());
        assertEquals(1, rules.get(0).when().anyOf().get(0).criteria().size());
        assertEquals(List.of(true), whole(spec));
    }

    @Test
    void aRuleOrTargetNotReadIsSaidByItsList() {
        Spec spec = read(HEAD + """
                stop: [ { when: { reps: 0 } }, otherwise ]
                after a break: { when: otherwise, to: [start] }
                every stage: { hold: 3 }
                place: { rules: { when: otherwise } }
                stages:
                  tuck: { advance: { when: { reps: 3 }, to: [goal] }, hold: otherwise }
                """);
        assertFalse(spec.stop().orElseThrow().whole());
        assertEquals(1, spec.stop().orElseThrow().rules().size());
        assertFalse(spec.afterABreak().orElseThrow().whole());
        assertFalse(spec.everyStage().orElseThrow().whole());
        assertFalse(spec.place().orElseThrow().whole());
        assertEquals(List.of(false), whole(spec));
        assertTrue(spec.whole());
    }

    @Test
    void aPartThatIsNoMapKeepsItsName() {
        Spec spec = read(HEAD + "ladders: { help: 3 }\ntrainee: { mass: 3 }\nstages: { tuck: 3 }\n");
        assertEquals("help", spec.ladders().get(0).name().value());
        assertEquals("mass", spec.trainee().get(0).name().value());
        assertEquals("tuck", spec.stages().get(0).name().value());
        assertEquals(List.of(false), whole(spec));
        assertFalse(spec.whole());
    }

    @Test
    void severalSignsInOneSpecAreAllFoundAndTheSpecIsStillRead() {
        Reading reading = SpecReader.read(HEAD + """
                stages:
                  tuck:
                    advance: { when: { reps: >= 12 } }
                    fall back: { when: { reps: < 5 } }
                    hold: { when: { reps: > 4, hold: @3 } }
                """);
        assertEquals(List.of(new Place(7, 30), new Place(8, 32), new Place(9, 27), new Place(9, 38)),
                reading.findings().stream().map(Finding::place).toList());
        assertTrue(reading.spec().isPresent());
    }

    @Test
    void aMistakeThatHidesTheRestLeavesNoSpecButWhatStandsBeforeItIsLookedAt() {
        Reading reading = SpecReader.read("colour: red\n" + HEAD + "goal:Tow\n" + STAGES);
        assertEquals(Optional.empty(), reading.spec());
        assertEquals(List.of("unknown-key", "yaml-syntax"),
                reading.findings().stream().map(finding -> finding.code().word()).toList());
    }

    @Test
    void quotesAndByteOrderMarksChangeNothing() {
        Spec plain = read(HEAD + STAGES);
        Spec quoted = read("\ufeff" + HEAD.replace("Pool entry", "\"Pool entry\"") + STAGES);
        assertEquals(plain, quoted);
    }

    @Test
    void scalarsAreNeverGuessed() {
        for (String written : List.of("no", "8.10", "1:30", "012", "~", "null", "0x1F", "1e3", "1_000")) {
            assertEquals(new Text(written, new Place(1, 10)), read("program: " + written).program());
        }
    }

    @Test
    void columnsCountCharactersAndLinesEndInEveryWay() {
        Spec spec = read("program: \"😀😀\" # é\r\nversion: 1\rgoal: { 😀é: 1}\n");
        assertEquals(new Text("😀😀", new Place(1, 10)), spec.program());
        assertEquals(new Text("1", new Place(2, 10)), spec.version());
        Reading wrong = SpecReader.read("a: 1\r\nb: 1\rgoal: [é, \"😀\"]x\n");
        assertEquals(new Place(3, 15), wrong.findings().stream()
                .map(Finding::place).filter(place -> place.line() == 3).findFirst().orElseThrow());
    }
}
