package rungwright.examples.spark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Logs of a large crew on the winter course of {@code first-bar-dip}, four days a file, made from a seed;
 * with cells that nobody can read, dates that are too early, and people whom the table of trainees lacks.
 */
record WinterLogs(Path folder, int people, int count, long seed) {
    private static final String HEAD =
            "trainee,date,session,set,event,support,lowering,reps,pace,clean,pain,dizzy,bands,to,by,why\n";
    private static final int DAYS = 4;
    private static final LocalDate FIRST_DAY = LocalDate.parse("2026-01-12");
    private static final List<String> BANDS = List.of("", "20", "40;25", "30;30;15", "50;40;25;10");

    /** Writes {@code trainees.csv} and {@code logs/part-000.csv} and so on. */
    void write() throws IOException {
        Random random = new Random(seed);
        StringBuilder table = new StringBuilder("trainee,date,bands,support test,lowering test\n");
        for (int person = 0; person < people; person++) {
            if (random.nextInt(50) > 0) {
                table.append(person(person)).append(",,").append(BANDS.get(random.nextInt(BANDS.size())))
                        .append(',').append(random.nextInt(60)).append(" s,").append(random.nextInt(12))
                        .append(" s\n");
            }
        }
        Files.writeString(folder.resolve("trainees.csv"), table);
        Path logs = Files.createDirectory(folder.resolve("logs"));
        for (int file = 0; file < count; file++) {
            StringBuilder log = new StringBuilder(HEAD);
            for (int day = 0; day < DAYS; day++) {
                day(random, file * DAYS + day, log);
            }
            Files.writeString(logs.resolve(name(file)), log);
        }
    }

    /** The files of the logs, in order. */
    List<String> files() {
        List<String> files = new ArrayList<>();
        for (int file = 0; file < count; file++) {
            files.add(folder.resolve("logs").resolve(name(file)).toString());
        }
        return files;
    }

    private void day(Random random, int day, StringBuilder log) {
        for (int person = 0; person < people; person++) {
            if (random.nextInt(3) == 0) {
                LocalDate date = FIRST_DAY.plusDays(3L * day - (random.nextInt(40) == 0 ? 30 : 0));
                String start = person(person) + "," + date + ",,";
                log.append(random.nextInt(25) == 0 ? event(random, start) : session(random, start));
            }
        }
    }

    private static String name(int file) {
        return String.format("part-%03d.csv", file);
    }

    private static String event(Random random, String start) {
        return start + (random.nextBoolean() ? ",clearance,,,,,,,,,,Ida,\n"
                : ",facts,,,,,,,," + BANDS.get(random.nextInt(BANDS.size())) + ",,,\n");
    }

    private static String session(Random random, String start) {
        StringBuilder rows = new StringBuilder();
        for (int set = 1; set <= 3; set++) {
            String whole = set > 1 ? ",,," : random.nextInt(1, 7) + "," + (random.nextBoolean() ? "yes"
                    : "no")
                    + "," + (random.nextInt(9) == 0 ? random.nextInt(8) : "") + ",";
            rows.append(start).append(set).append(",,").append(random.nextInt(50)).append(',')
                    .append(random.nextInt(15)).append(',')
                    .append(random.nextInt(60) == 0 ? "many" : random.nextInt(12)).append(',').append(whole)
                    .append(",,,,\n");
        }
        return rows.toString();
    }

    /** Names differ in their first letters, so that they are spread over all tasks. */
    private static String person(int person) {
        return "abcdefghij".charAt(person % 10) + "-" + person;
    }
}
