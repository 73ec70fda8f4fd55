package rungwright.journal;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.step.Event;
import rungwright.step.Trainee;

/** A volunteer lifeguard crew on its winter course, with a trainee for each kind of row. */
public final class Crew {
    /** The day of its sheet, a Wednesday. */
    public static final LocalDate DAY = LocalDate.parse("2026-03-04");

    private static final Path BAR_DIP = Path.of("../spec-examples/first-bar-dip/program.yaml");

    // Proven once: that takes longer than all else in these tests.
    private static final Program PROGRAM = program(text());
    private static final Program ROPE = program(text().replace("First bar dip", "First rope climb"));

    private Crew() {
    }

    /** The program it follows. */
    public static Program program() {
        return PROGRAM;
    }

    /** The program's text. */
    public static String text() {
        try {
            return Files.readString(BAR_DIP);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A program of a text. */
    public static Program program(String text) {
        return Checked.read(text).program().orElseThrow();
    }

    /** A sheet of the whole crew. */
    public static Sheet sheet() {
        return Sheet.of(program(), DAY, Sheet.USUALLY_STALLED_AFTER, journals());
    }

    /** Its journals, in the order of their names. */
    public static List<NamedStore> journals() {
        return stores().entrySet().stream().map(each -> new NamedStore(each.getKey(), each.getValue()))
                .toList();
    }

    /** One store a trainee; the names say what is the matter. */
    public static Map<String, Store> stores() {
        Map<String, Store> stores = new LinkedHashMap<>();
        stores.put("Alva", member().session("2026-03-02", "7", "0").store());
        stores.put("Bram", member().session("2026-02-27", "5", "7").store());
        stores.put("Cato", member().session("2026-03-03", "6", "0").store());
        stores.put("Dunja", member().session("2026-02-11", "8", "0")
                .session("2026-02-13", "5", "0").store());
        stores.put("Emre", stalled().store());
        stores.put("Fenna", member().move("2026-03-01", "goal", "Did one at the harbour").store());
        stores.put("Goran", member().session("2026-02-28", "5", "0")
                .move("2026-03-01", "stage free dip", "Was fresh, and did two with us").store());
        stores.put("Hedda", new ShelfStore());
        stores.put("Ilse", member("2026-03-09").store());
        stores.put("Jorik", member().session("2026-03-02", "7", "0").store()
                .damaged(2, "its check does not fit"));
        stores.put("Kaja", member().store().closed());
        stores.put("Lior", other().store());
        stores.put("Mats", member().session("2026-03-02", "7", "0").store().torn(3, 40));
        return stores;
    }

    /** Seven sessions in a row that hold. */
    private static Member stalled() {
        Member emre = member();
        for (String day : List.of("11", "13", "16", "18", "20", "23", "25")) {
            emre.session("2026-02-" + day, "6", "0");
        }
        return emre;
    }

    private static Member other() {
        return new Member(ROPE, new ShelfStore()).enrol("2026-02-09");
    }

    /** A member who started on Monday, 9 February 2026 with two bands. */
    public static Member member() {
        return member("2026-02-09");
    }

    /** A member who starts on that day. */
    public static Member member(String day) {
        return new Member(program(), new ShelfStore()).enrol(day);
    }

    /** A trainee whose journal is being written. */
    public record Member(Program program, ShelfStore store) {
        /** Starts with bands of 25 and 10 kg. */
        public Member enrol(String day) {
            Trainee trainee = Trainee.of(Map.of("bands", List.of("25 kg", "10 kg")),
                    Map.of("support test", "25 s", "lowering test", "6 s"));
            return record(Event.Enrol.of(LocalDate.parse(day), trainee));
        }

        /** Trains one set. */
        public Member session(String day, String reps, String pain) {
            return record(Event.Session.of(LocalDate.parse(day), Map.of("pace", "4", "pain", pain),
                    List.of(Map.of("reps", reps))));
        }

        /** Does one full dip under control. */
        public Member clean(String day) {
            return record(Event.Session.of(LocalDate.parse(day), Map.of("clean", "yes"),
                    List.of(Map.of("reps", "1"))));
        }

        /** Is moved by the coach. */
        public Member move(String day, String to, String why) {
            return record(new Event.Move(LocalDate.parse(day), Optional.empty(), to, why));
        }

        /** May go on. */
        public Member cleared(String day) {
            return record(new Event.Clearance(LocalDate.parse(day), Optional.empty(), "a physiotherapist"));
        }

        private Member record(Event event) {
            try {
                assertInstanceOf(Written.Done.class,
                        Journal.of(program, store).record(event, Note.NONE.by("Ida")));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return this;
        }
    }
}
