package rungwright.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwright.finding.Finding;
import rungwright.program.Checked;

/** Slips that are easily made when typing: each is one finding, and its hint is the line to write. */
class TypingSlipsTest {
    private static final String SPEC = """
            program: First rope climb
            version: 1
            goal: Four metres up
            trainee:
              body mass: { values: 30 to 200 kg by 0.5 }
            measures:
              height: { values: 0 to 6 m by 0.25, each: set, take: highest }
              feet: { values: [loose, locked] }
            stop:
              - when: { height: at least 5 m }
                say: Come down.
                once cleared: same place
            stages:
              smooth rope:
                do: { exercise: Climb, sets: 3, rest: 2 min }
                advance: { when: { height: at least 4 m, feet: locked }, say: Well done. }
                hold: { when: { height: 1 to 3.75 m } }
                fall back: { when: { height: under 1 m }, to: same place }
            """;

    private static String only(String right, String slip) {
        List<Finding> found = SpecReader.read(SPEC.replace(right, slip)).findings();
        assertEquals(1, found.size(), found::toString);
        Finding one = found.get(0);
        return one.place().line() + ":" + one.place().column() + " [" + one.code().word() + "] "
                + one.hint();
    }

    @Test
    void theSpecWithoutSlipsHasNoFindings() {
        assertEquals(List.of(), SpecReader.read(SPEC).findings());
    }

    @Test
    void aBracketRightAfterItsColonIsToldWithTheSpaceThatIsMissing() {
        assertEquals("7:10 [yaml-syntax] write `height: { values: 0 to 6 m by 0.25, each: set, take: "
                + "highest }`",
                only("height: { values", "height:{ values"));
        assertEquals("5:13 [yaml-syntax] put a space after the colon: `body mass: { values`",
                only("body mass: {", "body mass:{"));
        assertEquals("16:13 [yaml-syntax] write `advance: { when: { height: at least 4 m, feet: locked }, "
                + "say: Well done. }`", only("advance: {", "advance:{"));
        assertEquals("10:10 [yaml-syntax] put a space after the colon: `when: { height`",
                only("- when: {", "- when:{"));
    }

    @Test
    void aDecimalCommaIsToldWithThePoint() {
        assertEquals("17:36 [missing-key] a number has a point, not a comma: `height: 1 to 3.75 m`",
                only("3.75 m", "3,75 m"));
        assertEquals("7:35 [unknown-key] a number has a point, not a comma: `values: 0 to 6 m by 0.25`",
                only("by 0.25", "by 0,25"));
        assertEquals("15:45 [unknown-key] a number has a point, not a comma: `rest: 2.5 min`",
                only("2 min", "2,5 min"));
    }

    @Test
    void aCommaInWordsForPeopleIsNoDecimalComma() {
        assertEquals("16:72 [unknown-key] inside { } a text with a comma stands in quotes: "
                + "`say: \"Up 4, 5 m.\"`", only("say: Well done.", "say: Up 4,5 m."));
        assertEquals("17:34 [missing-key] to allow several values write them as a list: `reps: [5, 6]`",
                only("1 to 3.75 m", "1 m, 75 m"));
    }

    @Test
    void criteriaWithoutTheirWhenAreToldWithIt() {
        assertEquals("16:14 [missing-key] write `when: { height: at least 4 m, feet: locked }`",
                only("{ when: { height: at least 4 m, feet: locked }, say: Well done. }",
                        "{ height: at least 4 m, feet: locked, say: Well done. }"));
    }

    @Test
    void aCriterionWithoutItsColonIsToldWithIt() {
        assertEquals("18:26 [missing-key] write `height: under 1 m`",
                only("height: under 1 m", "height under 1 m"));
    }

    @Test
    void aSecondHoldIsToldHowSeveralAreWritten() {
        assertEquals("18:5 [duplicate-key] under one `hold:`, give each rule a line of its own after `- `:"
                + " `- { when: … }`", only("    fall back: { when: { height: under 1 m }, to: same place }",
                        "    hold: { when: { height: under 1 m } }"));
        assertEquals("8:3 [duplicate-key] put both in one, or rename one of them",
                only("  feet: {", "  height: {"));
    }

    @Test
    void aTextWithSeveralColonsIsOneFinding() {
        assertEquals("11:14 [yaml-syntax] put the text in quotes: `say: \"Stop: now: Come down.\"`",
                only("say: Come", "say: Stop: now: Come"));
    }

    @Test
    void theSpacesOfAWordProcessorAreCommonOnes() {
        assertEquals(List.of(), SpecReader.read(SPEC.replace("at least 4", "at\u00a0least\u202f4")
                .replace("body mass:", "body\u00a0mass:").replace("    do: {", "\u00a0\u00a0  do:\u00a0{"))
                .findings());
    }

    @Test
    void theQuotesOfAWordProcessorGoWhereOthersAreNeeded() {
        assertEquals("11:15 [yaml-syntax] put the text in quotes: `say: \"Stop: come down.\"`",
                only("say: Come down.", "say: \u201cStop: come down.\u201d"));
        assertEquals("16:74 [unknown-key] inside { } a text with a comma stands in quotes: "
                + "`say: \"Well, done.\"`", only("say: Well done.", "say: \u201eWell, done.\u201c"));
    }

    @Test
    void aKeyWithoutItsColonIsToldWithItsValue() {
        assertEquals("11:5 [yaml-syntax] write `say: Come down.`", only("say: Come", "say Come"));
        assertEquals("11:5 [yaml-syntax] write `say: Come down.`", only("say: Come", "say = Come"));
        assertEquals("14:3 [yaml-syntax] write `hold rope:` where it is a key",
                only("smooth rope:", "hold rope"));
    }

    @Test
    void aListWithoutItsBracketsIsToldWithThem() {
        assertEquals("8:26 [unknown-key] write a list in brackets: `values: [loose, locked]`",
                only("[loose, locked]", "loose, locked"));
    }

    @Test
    void anItemWithoutItsSpaceIsToldHowItemsBegin() {
        assertEquals("4:11 [wrong-kind] begin each item with `- `, a hyphen and a space",
                only("trainee:", "cautions: \u2022 Warm up.\ntrainee:"));
    }

    @Test
    void proseAfterWhenIsToldAsCriteria() {
        String rule = "{ height: at least 4 m, feet: locked }";
        assertEquals("16:22 [wrong-kind] write `{ height: at least 4 m, feet: not loose }`",
                only(rule, "height at least 4 m and feet not loose"));
        assertEquals("16:22 [wrong-kind] write `[ { height: at least 4 m }, { feet: not loose } ]`",
                only(rule, "height at least 4 m or feet not loose"));
    }

    @Test
    void aUnitThatIsWrittenOutIsToldWithItsSign() {
        String end = "? the units are s, min, kg, g, lb, m, cm, km, %";
        for (String[] each : new String[][] {{"2 min", "2 minutes", "min"},
            {"0 to 6 m", "0 to 6 metres", "m"},
            {"30 to 200 kg", "30 to 200 Kilos", "kg"}, {"least 4 m", "least 4 meters", "m"}}) {
            List<Finding> found = Checked.read(SPEC.replace(each[0], each[1])).findings();
            String hint = "did you mean `" + each[2] + "`" + end;
            assertTrue(found.stream().anyMatch(one -> one.hint().equals(hint)),
                    found::toString);
        }
    }

    @Test
    void aRangeWithADashIsToldWithTo() {
        for (String slip : new String[] {"0-6 m", "0 \u2013 6 m", "0 bis 6 m"}) {
            assertTrue(Checked.read(SPEC.replace("0 to 6 m by 0.25", slip)).findings().stream()
                    .anyMatch(one -> one.hint().equals("write `0 to 6 m`")), slip);
        }
    }

    @Test
    void aHoldWithoutAConditionIsToldTheWordForTheRest() {
        String hold = "{ when: { height: 1 to 3.75 m } }";
        assertEquals("17:11 [wrong-kind] write `hold: otherwise`", only(hold, "otherwhise"));
        assertEquals("17:11 [wrong-kind] write `otherwise` for whatever is left, or "
                + "`{ when: { measure: phrase } }`", only(hold, "else"));
    }

    @Test
    void aStageInTheWrongColumnIsToldSo() {
        String column = "where it is a stage, begin it in the column in which the other stages begin";
        assertEquals("19:5 [unknown-key] " + column,
                only("to: same place }\n", "to: same place }\n    knots:\n"));
        String left = SPEC + "knots:\n    hold: otherwise\n  loops:\n    hold: otherwise\n";
        assertEquals(List.of(column, "begin line 19 in column 3 too: it stands too far to the left"),
                SpecReader.read(left).findings().stream().map(Finding::hint).toList());
    }
}
