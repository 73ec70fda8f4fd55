package rungwright.program;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class LabelsTest {
    @Test
    void rulesAreCalledByTheirNamesElseByWhereTheyStand() {
        Outline outline = Specs.outline("""
                measures: { reps: { values: 0 to 60 }, pain: { values: 0 to 10 } }
                stop:
                  - { when: { pain: 9 }, once cleared: start }
                  - { when: { pain: 10 }, once cleared: start }
                after a break: { when: { days away: 9 }, to: start }
                every stage:
                  hold: { when: { pain: 5 } }
                  fall back: { when: { pain: 6 }, at the bottom: start }
                place:
                  rules:
                    - { when: otherwise, to: stage tuck }
                stages:
                  tuck:
                    advance:
                      - { when: { reps: 1 } }
                      - { name: Much stronger, when: { reps: 2 } }
                      - { when: { reps: 3 } }
                    hold: otherwise
                  press:
                    advance: { name: Much stronger, when: { reps: 2 } }
                """);
        assertEquals(List.of("stop", "stop 2"), labels(outline.stop().rules()));
        assertEquals(List.of("after a break"), labels(outline.afterABreak().orElseThrow().rules()));
        assertEquals(List.of("every stage: hold", "every stage: fall back"),
                labels(outline.everyStage().rules()));
        assertEquals(List.of("place"), labels(outline.placement().orElseThrow().rules()));
        assertEquals(List.of("tuck: advance", "Much stronger", "tuck: advance 3", "tuck: hold"),
                labels(outline.stages().get(0).rules()));
        assertEquals(List.of("Much stronger"), labels(outline.stages().get(1).rules()));
    }

    private static List<String> labels(List<Rule> rules) {
        return rules.stream().map(Rule::label).toList();
    }
}
