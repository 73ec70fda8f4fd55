package rungwright.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.replay.LogText;
import rungwright.replay.QuickRuns;
import rungwright.replay.Roster;

/** The quick way and the long way say the same of a log of JSON Lines, however odd it is. */
class JsonQuickParityTest {
    private static final int[] ROOMS = {40, 90, 300, 5000, 1 << 18};
    private static final Program PROGRAM = Checked.read("""
            program: Plank
            version: 1
            goal: A minute
            measures:
              hold: { values: 0 to 90 s by 0.5, each: set, take: highest }
              form: { values: yes or no, each: set, if not logged: yes }
              pain: { values: 0 to 10, if not logged: 0 }
              how the night was: { values: [bad, fair, good], if not logged: fair }
            stop:
              - { when: { pain: at least 8 }, say: See a doctor, once cleared: start }
            stages:
              knees:
                advance: { when: { hold: at least 60 s, form: yes in every set }, in a row: 2 }
                hold: otherwise
              feet:
                fall back: { when: { hold: under 10 s }, to: stage knees }
                advance: { when: { hold: at least 70 s, how the night was: [fair, good] }, within: 2 of 4 }
                hold: otherwise
            """).program().orElseThrow();

    private static void compare(byte[] log, Random random) {
        Set<String> ignored = switch (random.nextInt(6)) {
            case 0 -> Set.of("notes", "pain");
            case 1 -> Set.of("notes", "sets");
            default -> Set.of("notes");
        };
        Set<String> trainees = new TreeSet<>();
        BufferedReader text = new BufferedReader(new LogText(new ByteArrayInputStream(log)));
        List<String> expected = QuickRuns.longWay(PROGRAM, Roster.EMPTY,
                new JsonLinesLog(text, PROGRAM.outline(), ignored), trainees);
        int room = ROOMS[random.nextInt(ROOMS.length)];
        List<String> said = QuickRuns.quickWay(PROGRAM, Roster.EMPTY,
                new JsonQuick(new ByteArrayInputStream(log), PROGRAM, ignored), trainees, 1
                + random.nextInt(2),
                room);
        assertEquals(String.join("\n", expected), String.join("\n", said),
                () -> "room " + room + "\n" + new String(log, StandardCharsets.UTF_8));
    }

    private static byte[] log(Random random, int days, int people) {
        StringBuilder log = new StringBuilder();
        LocalDate day = LocalDate.parse("2026-01-05");
        for (int i = 0; i < days; i++) {
            for (int person = 0; person < people; person++) {
                log.append("{\"trainee\":").append(person == 0 ? "17" : "\"T" + person + "\"")
                        .append(person % 3 == 2 ? " , \"date\" : \"" : ",\"date\":\"").append(day).append('"')
                        .append(random.nextInt(3) == 0 ? ",\"pain\":" + random.nextInt(9) : "")
                        .append(random.nextInt(3) == 0 ? ",\"how the night was\":\"good\"" : "")
                        .append(random.nextInt(5) == 0 ? ",\"notes\":\"wet straße\"" : "")
                        .append(random.nextInt(5) == 0 ? ",\"expect\":\"hold\"" : "")
                        .append(random.nextInt(9) == 0 ? ",\"expect at\":\"knees\"" : "")
                        .append(random.nextInt(9) == 0 ? ",\"event\":\"session\"" : "")
                        .append(random.nextInt(9) == 0 ? ",\"session\":2" : "")
                        .append(random.nextInt(30) == 0 ? ",\"id\":\"e" + i + "\"" : "");
                sets(log, random);
                log.append(random.nextInt(30) == 0 ? "}\r\n" : "}\n");
            }
            day = day.plusDays(2);
        }
        return log.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void sets(StringBuilder log, Random random) {
        log.append(",\"sets\":[");
        int sets = random.nextInt(4);
        for (int set = 0; set < sets; set++) {
            log.append(set > 0 ? "," : "").append("{\"hold\":")
                    .append(random.nextInt(3) == 0 ? "\"" + random.nextInt(95) + " s\"" : random.nextInt(90)
                    + ".5")
                    .append(random.nextInt(3) == 0 ? ",\"form\":" + random.nextBoolean() : "")
                    .append(random.nextInt(9) == 0 ? ",\"form\":null" : "").append('}');
        }
        log.append(']');
    }

    @Test
    void plainLogsComeToTheSame() {
        for (int seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            compare(log(random, 10, 5), random);
        }
    }

    @Test
    void logsWithChangedBytesComeToTheSame() {
        for (int seed = 0; seed < 800; seed++) {
            Random random = new Random(seed);
            compare(QuickRuns.changed(log(random, 3, 4), random, 1 + random.nextInt(6)), random);
        }
    }
}
