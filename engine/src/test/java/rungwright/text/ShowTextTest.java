package rungwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwright.program.Checked;
import rungwright.spec.Spec;
import rungwright.yaml.SpecReader;

class ShowTextTest {
    private static final String ROW = """
            program: Rowing start
            version: 2
            goal: Twenty strokes in time
            for: Crew members over sixteen
            cautions: [Wear a vest.]
            sources: ["Own notes, 2026"]
            trainee:
              cords: { list of: 5 to 40 kg by 2.5, at most: 3 }
            measures:
              strokes: { values: 0 to 40, each: set, take: highest, ask: Strokes in time }
              clean: { values: yes or no }
              pain: { values: 0 to 10, if not logged: 0 }
              gain: { from: pain - previous pain, if none: 0 }
            ladders:
              help: { each of: cords, together first: yes, then: no cord }
            stop:
              - { when: { pain: at least 6 }, say: Stop., once cleared: 2 rungs down }
            after a break:
              - { when: { days away: at least 14 }, to: start }
              - { when: otherwise, to: same place }
            every stage:
              hold: { when: [ { pain: 4 to 5 }, { gain: over 2 } ] }
            stages:
              pull:
                ladder: help
                do: { exercise: Seated pull, sets: 3, reps: 5 to 8, tempo: 2-1-2-0, rest: 90 s }
                advance: { name: Less cord, when: { strokes: at least 20, clean: yes }, in a row: 2 }
                fall back: { when: { strokes: under 5 }, at the bottom: same place }
                hold: otherwise
            """;

    private static final String SHOWN = """
            Rowing start, version 2
            Goal: Twenty strokes in time
            For: Crew members over sixteen

            Cautions
            --------
            - Wear a vest.

            Sources
            -------
            - Own notes, 2026

            What is known about a trainee
            -----------------------------
            - cords: a list of at most 3, each 5 to 40 kg by 2.5 kg

            What is logged
            --------------
            - strokes: 0 to 40 in each set, of which the highest counts. Strokes in time
            - clean: yes or no
            - pain: 0 to 10; if not logged, 0
            - gain: not logged but worked out as pain - previous pain (0 the first time)
            - days away: counted, the days since the last session

            When to stop
            ------------
            A stop rule comes before every other rule. Once a professional has cleared the
            trainee, they go on where the last column says.
              when                                | what happens      | where it leads
              ------------------------------------+-------------------+---------------------
              pain at least 6                     | stop, seek        | 2 rungs down, at
                                                  | medical help      | most to the bottom;
                                                  |                   | from the bottom
                                                  |                   | rung: the same place
              says: Stop.
              ------------------------------------+-------------------+---------------------

            After a break
            -------------
            Looked at before the session that follows it, which is then judged in the place
            that gives.
              when                                | what happens      | where it leads
              ------------------------------------+-------------------+---------------------
              days away at least 14               | goes on           | the start: stage
                                                  |                   | pull, its bottom
                                                  |                   | rung
              ------------------------------------+-------------------+---------------------
              otherwise, that is days away under  | goes on           | the same place
              14                                  |                   |
              ------------------------------------+-------------------+---------------------

            In every stage
            --------------
            These rules come before a stage's own.
            Left by the rules above: pain under 6.
              when                                | what happens      | where it leads
              ------------------------------------+-------------------+---------------------
              pain 4 to 5; or gain over 2         | hold              | the same place
              ------------------------------------+-------------------+---------------------

            Stage 1 of 1: pull
            ------------------
            - Seated pull
            - 3 sets of 5 to 8 reps
            - tempo 2-1-2-0 (2 s down, pause 1 s, 2 s up, no pause)
            - rest 90 s between sets
            Rungs, easiest first: from the cords at hand: all together, then without the
                                  smallest, and so on to the two largest; then each alone,
                                  the largest first; then no cord
            Left by the rules above: pain under 4 and gain at most 2.
              when                                | what happens      | where it leads
              ------------------------------------+-------------------+---------------------
              strokes at least 20 and clean yes,  | advance: Less     | 1 rung up; from the
              and that in 2 sessions in a row     | cord              | top rung: the goal
              ------------------------------------+-------------------+---------------------
              strokes under 5                     | fall back         | 1 rung down; from
                                                  |                   | the bottom rung: the
                                                  |                   | same place
              ------------------------------------+-------------------+---------------------
              otherwise, that is strokes 5 to 19; | hold              | the same place
              or strokes at least 5 and clean no  |                   |
              ------------------------------------+-------------------+---------------------
            """;

    @Test
    void theWholeProgramStandsThereInPlainWords() {
        assertEquals(SHOWN, show(ROW));
    }

    @Test
    void everyLineFitsEightyColumns() {
        String wide = ROW.replace("Own notes, 2026", "https://example.org/" + "long-address/".repeat(12));
        show(wide).lines().forEach(line -> assertTrue(Width.of(line) <= 80, line));
    }

    @Test
    void anOtherwiseThatIsLeftNothingSaysSo() {
        String all = ROW.replace("when: { strokes: under 5 }", "when: { strokes: under 20 }")
                .replace("hold: otherwise", "hold:\n      - { when: { strokes: at least 20, clean: no } }\n"
                        + "      - { when: otherwise }");
        assertTrue(show(all).contains("otherwise, which never is: the"), () -> show(all));
    }

    @Test
    void aStageOfOtherwiseAloneCatchesAnySession() {
        String one = ROW.replaceAll("(?s)stop:.*stages:", "stages:").replace("    hold: otherwise\n",
                "    hold: otherwise\n  rest:\n    advance: { when: otherwise }\n");
        assertTrue(show(one).contains("otherwise, that is any session      | advance"), () -> show(one));
    }

    private static String show(String yaml) {
        Spec spec = SpecReader.read(yaml).spec().orElseThrow();
        Checked checked = Checked.read(yaml);
        assertTrue(checked.program().isPresent(), () -> checked.findings().toString());
        List<String> lines = ShowText.lines(spec, checked.program().get(), Colours.OFF);
        return String.join("\n", lines) + "\n";
    }
}
