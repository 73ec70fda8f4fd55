package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A folder with a spec and the journal of Alva of the lifeguard crew, on Wednesday, 4 March 2026. */
final class RopeHall {
    static final String SPEC = """
            program: Rope start
            version: 1
            goal: One climb without help
            cautions: [Lay the mat under the rope.]
            trainee:
              bands: { list of: 5 to 60 kg by 5, at most: 3 }
            measures:
              pulls: { values: 0 to 20, each: set, take: highest, ask: Pulls in the set }
              hang time: { values: 0 to 60 s, each: set, take: highest, if not logged: 0 s }
              pain: { values: 0 to 10, if not logged: 0, ask: "Worst pain, 0 to 10?" }
              calm: { values: yes or no, ask: "Was every pull calm?" }
            ladders:
              help: { each of: bands, together first: yes, then: no band }
            stop:
              - { name: Pain, when: { pain: at least 6 }, say: See a doctor., once cleared: 1 rung down }
            after a break:
              - { name: Long gap, when: { days away: at least 14 }, to: 1 rung down }
              - { name: Usual gap, when: { days away: under 14 }, to: same place }
            place:
              assess:
                dead hang: { values: 0 to 120 s, ask: Longest hang }
              rules:
                - { name: Strong grip, when: { dead hang: at least 20 s }, to: stage pull on the top rung }
                - { name: Start low, when: { dead hang: under 20 s }, to: stage pull }
            stages:
              pull:
                ladder: help
                do: { exercise: Pull up the rope, sets: 2, rest: 2 min }
                advance: { name: Enough pulls, when: { pulls: at least 10, calm: yes } }
                fall back: { name: Too few, when: { pulls: under 4 }, at the bottom: same place }
                hold:
                  - { name: Build up, when: { pulls: 4 to 9 } }
                  - { name: Calm down, when: { pulls: at least 10, calm: no } }
            """;

    private final Path folder;
    private final Shell shell = new Shell();
    private String spec;

    RopeHall(Path folder) throws IOException {
        this.folder = folder;
        this.spec = Files.writeString(folder.resolve("rope.yaml"), SPEC).toString();
    }

    /** From here on under another spec. */
    void follow(String text) throws IOException {
        spec = Files.writeString(folder.resolve("other.yaml"), text).toString();
    }

    /** From here on it is another day. */
    void on(String day) {
        shell.on(LocalDate.parse(day));
    }

    /** Alva is enrolled with two bands on 2 March, and trains on the third. */
    void begin() {
        done("log", "enrol", "bands=20,10 kg", "dead hang=10", "--date", "2026-03-02");
        done("log", "session", "pulls=10,7", "calm=yes", "--date", "2026-03-03");
    }

    /** Runs a command about Alva that ends well. */
    String done(String command, String... rest) {
        assertEquals(0, run(command, rest), () -> shell.out() + shell.err());
        return out();
    }

    int run(String command, String... rest) {
        return shell.run(arguments(command, rest));
    }

    /** At a terminal where somebody types these lines. */
    int typing(String lines, String... rest) {
        return shell.typing(lines, arguments("log", rest));
    }

    private String[] arguments(String command, String... rest) {
        List<String> all = new ArrayList<>(List.of(command, spec, journal().toString()));
        all.addAll(Arrays.asList(rest));
        return all.toArray(String[]::new);
    }

    /** What was written, on one line, with the folder left out. */
    String out() {
        return plain(shell.out());
    }

    String err() {
        return plain(shell.err());
    }

    private String plain(String text) {
        return text.replace(folder.toString() + "/", "").replaceAll("\\s+", " ").strip();
    }

    /** As it was written. */
    String raw() {
        return shell.out();
    }

    Shell shell() {
        return shell;
    }

    String spec() {
        return spec;
    }

    Path journal() {
        return folder.resolve("alva.jsonl");
    }

    List<String> lines() throws IOException {
        return Files.exists(journal()) ? Files.readAllLines(journal(), StandardCharsets.UTF_8) : List.of();
    }
}
