package rungwright.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungwright.program.Checked;
import rungwright.program.Program;

/** The quick way and the long way say the same of a CSV log, however odd it is. */
class QuickReplayParityTest {
    private static final Path EXAMPLES = Path.of("../spec-examples");
    private static final int[] ROOMS = {40, 90, 300, 5000, 1 << 18};
    private static final String PLANK = """
            program: Plank
            version: 1
            goal: A minute
            measures:
              hold: { values: 0 to 90 s by 0.5, each: set, take: highest }
              form: { values: yes or no, each: set, if not logged: yes }
              grip: { values: [open, half closed, closed with the thumb], each: set, if not logged: open }
              pain: { values: 0 to 10, if not logged: 0 }
              mood: { values: 0 to 5 }
            stop:
              - { when: { pain: at least 8 }, say: See a doctor, once cleared: start }
            after a break:
              - { when: { days away: under 20 }, to: same place }
              - { when: otherwise, to: start }
            stages:
              knees:
                advance: { when: { hold: at least 60 s, form: yes in every set }, in a row: 2 }
                hold: otherwise
              feet:
                fall back: { when: { hold: under 10 s }, to: stage knees }
                advance: { when: { hold: at least 70 s, mood: at least 3 }, within: 2 of 4 }
                hold: otherwise
            """;
    private static final Program PROGRAM = Checked.read(PLANK).program().orElseThrow();

    private static void compare(Program program, Roster roster, byte[] log, Random random) {
        Set<String> ignored = random.nextInt(4) == 0 ? Set.of("notes", "pain") : Set.of("notes");
        Set<String> trainees = new TreeSet<>();
        List<String> expected = QuickRuns.longWay(program, roster, log, ignored, trainees);
        int room = ROOMS[random.nextInt(ROOMS.length)];
        int processors = 1 + random.nextInt(2);
        List<String> said = QuickRuns.quickWay(program, roster, log, ignored, trainees, processors, room);
        assertEquals(String.join("\n", expected), String.join("\n", said),
                () -> "room " + room + "\n" + new String(log, StandardCharsets.UTF_8));
    }

    /** A log of some days; now and then a value, a date or a number is none. */
    private static byte[] log(Random random, int days, int people, int oddity) {
        StringBuilder log = new StringBuilder(
                "trainee,date,session,set,hold,form,grip,pain,mood,notes,expect,expect at\n");
        LocalDate day = LocalDate.parse("2026-01-05");
        for (int i = 0; i < days; i++) {
            for (int person = 0; person < people; person++) {
                int sets = 1 + random.nextInt(3);
                for (int set = 1; set <= sets; set++) {
                    boolean odd = random.nextInt(oddity) == 0;
                    log.append(person % 5 == 4 ? "Marlène of the second crew " + person : "T" + person)
                            .append(',')
                            .append(odd && random.nextBoolean() ? day.minusDays(3) : day).append(",,")
                            .append(odd && random.nextBoolean() ? set + 1 : set).append(',')
                            .append(random.nextInt(odd ? 99 : 90)).append(random.nextInt(3) == 0 ? ".5 s"
                            : "")
                            .append(random.nextBoolean() ? ",yes," : ",,")
                            .append(random.nextInt(5) == 0 ? "closed with the thumb" : "").append(',')
                            .append(set == 1 && random.nextInt(4) == 0 ? random.nextInt(9) : "").append(',')
                            .append(set == 1 || odd ? "" + random.nextInt(6) : "").append(",")
                            .append(random.nextInt(9) == 0 ? "wet straße" : "").append(',')
                            .append(set == 1 && random.nextInt(3) == 0 ? "hold" : "").append(',')
                            .append(set == 1 && random.nextInt(3) == 0 ? "knees" : "")
                            .append(random.nextInt(40) == 0 ? "\r\n" : "\n");
                }
            }
            day = day.plusDays(random.nextInt(12) == 0 ? 25 : 2);
        }
        return log.toString().getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void plainLogsComeToTheSame() {
        for (int seed = 0; seed < 40; seed++) {
            Random random = new Random(seed);
            compare(PROGRAM, Roster.EMPTY, log(random, 12, 6, 100_000), random);
        }
    }

    @Test
    void logsWithOddRowsComeToTheSame() {
        for (int seed = 0; seed < 100; seed++) {
            Random random = new Random(seed);
            compare(PROGRAM, Roster.EMPTY, log(random, 8, 6, 1 + random.nextInt(40)), random);
        }
    }

    @Test
    void logsWithChangedBytesComeToTheSame() {
        for (int seed = 0; seed < 600; seed++) {
            Random random = new Random(seed);
            byte[] log = log(random, 3, 4, 1000);
            compare(PROGRAM, Roster.EMPTY, QuickRuns.changed(log, random, 1 + random.nextInt(6)), random);
        }
    }

    @Test
    void theLogsOfAllExamplesComeToTheSameWholeAndChanged() throws IOException {
        int examples = 0;
        for (Path folder : folders()) {
            Program program = Checked.read(Files.readString(folder.resolve("program.yaml"))).program()
                    .orElseThrow();
            Path people = folder.resolve("trainees.csv");
            Roster roster = Files.exists(people) ? Watch.roster(program, Files.readString(people))
                    : Roster.EMPTY;
            byte[] log = Files.readAllBytes(folder.resolve("log.csv"));
            examples++;
            for (int seed = 0; seed < 40; seed++) {
                Random random = new Random(seed);
                compare(program, roster, QuickRuns.changed(log, random, seed == 0 ? 0 : 1 + seed % 5),
                        random);
            }
        }
        assertTrue(examples >= 3, examples + " examples have a log");
    }

    private static List<Path> folders() throws IOException {
        try (Stream<Path> folders = Files.list(EXAMPLES)) {
            return folders.filter(folder -> Files.exists(folder.resolve("log.csv"))).sorted().toList();
        }
    }
}
