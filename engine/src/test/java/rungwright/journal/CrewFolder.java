package rungwright.journal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import rungwright.json.JournalJson;
import rungwright.step.Event;
import rungwright.step.Status;
import rungwright.step.Trainee;

/**
 * Fills a folder with the journals of a large class, the same for the same numbers. Started by itself with a
 * folder, how many trainees and how many sessions each, it makes what speed is measured on; with a folder
 * alone, a crew with every kind of row.
 */
public final class CrewFolder {
    private static final List<List<String>> BANDS = List.of(List.of("40 kg", "25 kg", "10 kg"),
            List.of("30 kg", "15 kg"), List.of("45 kg", "30 kg", "20 kg", "10 kg", "5 kg"), List.of());

    private CrewFolder() {
    }

    /** Writes the journals. */
    public static void main(String[] arguments) throws IOException {
        if (arguments.length == 1) {
            everyKind(Path.of(arguments[0]));
            return;
        }
        fill(Path.of(arguments[0]), Integer.parseInt(arguments[1]), Integer.parseInt(arguments[2]));
    }

    /** Writes so many journals, named {@code T0001} and up, each with so many sessions. */
    public static void fill(Path folder, int trainees, int sessions) throws IOException {
        Files.createDirectories(folder);
        for (int trainee = 1; trainee <= trainees; trainee++) {
            fill(folder.resolve("T%04d.jsonl".formatted(trainee)), new Random(trainee), sessions);
        }
    }

    /** Writes the crew with a trainee for each kind of row, and two files that are no journals. */
    public static void everyKind(Path folder) throws IOException {
        Files.createDirectories(folder);
        for (NamedStore each : Crew.journals()) {
            Path file = folder.resolve(each.name() + ".jsonl");
            if (each.name().equals("Kaja")) {
                Files.createDirectory(file);
            } else {
                write(file, ((ShelfStore) each.store()).entries());
            }
        }
        Path jorik = folder.resolve("Jorik.jsonl");
        Files.writeString(jorik, Files.readString(jorik).replaceFirst("\"reps\":\"7\"", "\"reps\":\"8\""));
        Path mats = folder.resolve("Mats.jsonl");
        Files.writeString(mats, "{\"form\":1,\"entry\":3,", StandardOpenOption.APPEND);
        Files.writeString(folder.resolve("Mats.jsonl.torn"), "{\"form\":1,\n");
        Files.writeString(folder.resolve("bands to buy.txt"), "15 kg\n");
    }

    private static void fill(Path file, Random random, int sessions) throws IOException {
        Fold fold = Fold.of(Crew.program(), List.of());
        LocalDate day = Crew.DAY.minusDays(sessions * 7L / 3 + random.nextInt(5));
        Map<String, String> tests = Map.of("support test", random.nextInt(40) + " s", "lowering test",
                random.nextInt(12) + " s");
        fold = with(fold, Event.Enrol.of(day,
                Trainee.of(Map.of("bands", BANDS.get(random.nextInt(BANDS.size()))), tests)));
        for (int session = 0; session < sessions; session++) {
            day = day.plusDays(2 + session % 3 / 2);
            fold = with(fold, session(day, random));
            if (fold.state().orElseThrow().status() == Status.STOPPED && session < sessions - 1) {
                fold = with(fold, new Event.Clearance(day, Optional.empty(), "a physiotherapist"));
            }
        }
        write(file, fold.entries());
    }

    /** All at once, which is quicker than adding them one by one, each flushed to the disk. */
    static void write(Path file, List<Entry> entries) throws IOException {
        ByteArrayOutputStream lines = new ByteArrayOutputStream();
        Chain chain = new Chain();
        for (Entry entry : entries) {
            byte[] line = chain.line(JournalJson.FORM.write(entry));
            chain.follows(line, 0, line.length - Chain.TAIL);
            lines.writeBytes(line);
            lines.write('\n');
        }
        Files.write(file, lines.toByteArray());
    }

    private static Fold with(Fold fold, Event event) {
        int number = fold.entries().size() + 1;
        Draft draft = Draft.of(fold, number, told -> new Entry.Recorded(number, Optional.of("Ida"),
                event instanceof Event.Session ? 1 : 0, event, told));
        return fold.with(draft.entry().orElseThrow());
    }

    private static Event session(LocalDate day, Random random) {
        int pain = random.nextInt(40) == 0 ? 7 : random.nextInt(4);
        List<Map<String, String>> sets = IntStream.range(0, 3).mapToObj(set -> Map.of(
                "reps", Integer.toString(random.nextInt(10)), "support", (10 + random.nextInt(30)) + " s",
                "lowering", (2 + random.nextInt(8)) + " s")).toList();
        return Event.Session.of(day, Map.of("pain", Integer.toString(pain), "pace", "4"), sets);
    }
}
