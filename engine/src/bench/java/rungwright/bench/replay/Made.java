package rungwright.bench.replay;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.SplittableRandom;

/**
 * The logs that are measured: a winter course of 100,000 people in the order of its days, as CSV and as JSON
 * Lines. The same seed gives the same logs, and a shorter log is the beginning of a longer one.
 */
final class Made {
    /** What the sessions are decided by. */
    static final String SPEC = """
            program: Dip course
            version: 1
            goal: A strict dip with help from nobody
            measures:
              reps: { values: 0 to 60, each: set, take: highest }
              support: { values: 0 to 300 s, each: set, take: highest }
              clean: { values: yes or no, each: set, take: lowest }
              pain: { values: 0 to 10, if not logged: 0 }
            ladders:
              help: { rungs: [high bench, low bench, box, one hand] }
            stop:
              - { when: { pain: at least 9 }, say: See a doctor, once cleared: 1 rung down }
            after a break:
              - { when: { days away: under 14 }, to: same place }
              - { when: { days away: at least 14 }, to: 1 rung down }
            every stage:
              hold: { when: { pain: 3 to 8 } }
            stages:
              assisted dip:
                ladder: help
                advance: { when: { reps: at least 15, clean: yes }, in a row: 2 }
                fall back: { when: { reps: under 5 }, at the bottom: same place }
                hold: otherwise
              free dip:
                ladder: help
                advance: { when: { reps: at least 18, support: at least 55 s } }
                fall back: { when: { reps: under 5 }, at the bottom: stage assisted dip on the top rung }
                hold: otherwise
              strict dip:
                advance: { when: { reps: at least 40 } }
                fall back: { when: { reps: under 5 }, to: stage free dip on the top rung }
                hold: otherwise
            """;
    private static final int PEOPLE = 100_000;
    private static final int ABSENT_ONE_IN = 10;
    private static final long SEED = 7;

    private final SplittableRandom random = new SplittableRandom(SEED);
    private final Path csv;
    private final Path jsonLines;
    private final long rows;

    private Made(Path folder, long rows) {
        this.csv = folder.resolve("log-" + rows + ".csv");
        this.jsonLines = folder.resolve("log-" + rows + ".jsonl");
        this.rows = rows;
    }

    /** Logs of so many set rows, made where they are not there yet. */
    static Made of(Path folder, long rows) throws IOException {
        Made made = new Made(folder, rows);
        Files.createDirectories(folder);
        if (!Files.exists(made.csv) || !Files.exists(made.jsonLines)) {
            made.make();
        }
        return made;
    }

    Path csv() {
        return csv;
    }

    Path jsonLines() {
        return jsonLines;
    }

    private void make() throws IOException {
        Path csvPart = csv.resolveSibling("part.csv");
        Path linesPart = csv.resolveSibling("part.jsonl");
        try (Writer cells = Files.newBufferedWriter(csvPart); Writer lines =
                Files.newBufferedWriter(linesPart)) {
            cells.write("trainee,date,set,reps,support,clean,pain\n");
            long written = 0;
            for (int day = 0; written < rows; day++) {
                // Three days a week.
                String date = LocalDate.parse("2025-01-06").plusDays(day / 3 * 7L + day % 3 * 2).toString();
                for (int person = 0; person < PEOPLE && written < rows; person++) {
                    if (random.nextInt(ABSENT_ONE_IN) > 0) {
                        written += session(cells, lines, "T" + (PEOPLE + person), date);
                    }
                }
            }
        }
        Files.move(csvPart, csv);
        Files.move(linesPart, jsonLines);
    }

    private int session(Writer cells, Writer lines, String trainee, String date) throws IOException {
        int sets = 2 + random.nextInt(3);
        int pain = random.nextInt(4);
        StringBuilder line = new StringBuilder("{\"trainee\":\"").append(trainee).append("\",\"date\":\"")
                .append(date).append("\",\"pain\":").append(pain).append(",\"sets\":[");
        for (int set = 1; set <= sets; set++) {
            int reps = random.nextInt(20);
            int support = 10 + random.nextInt(60);
            boolean clean = random.nextInt(5) > 0;
            cells.write(trainee + "," + date + "," + set + "," + reps + "," + support + "," + (clean ? "yes"
                    : "no")
                    + "," + (set == 1 ? pain : "") + "\n");
            line.append(set > 1 ? "," : "").append("{\"reps\":").append(reps).append(",\"support\":")
                    .append(support)
                    .append(",\"clean\":").append(clean).append('}');
        }
        lines.write(line.append("]}\n").toString());
        return sets;
    }
}
