package rungwright.replay;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import rungwright.program.Program;
import rungwright.step.State;

/** What the two ways of replaying the same log say, to be compared. */
public final class QuickRuns {
    private static final List<String> ODDITIES = List.of("\"", "\"\"", "\"\n", ",", "\n", "\r", "\r\n", " ",
            "0",
            "é", "\u2003", "ab", "{", "}",
            "\\", "-1", "1.5", "null", "T01", "2026-03-02", "\t", "hold", ":", "[");

    private static final Pattern LEFT = Pattern.compile("left=\\{[^}]*");

    private QuickRuns() {
    }

    /** Trainees who are told on, with what was said of what went wrong, and how it ended for each. */
    private static final class Told implements ReplayListener {
        private final List<String> said = new ArrayList<>();
        private final Set<String> trainees;

        Told(Set<String> trainees) {
            this.trainees = trainees;
        }

        @Override
        public void decided(Traced traced) {
            trainees.add(traced.trainee());
            if (traced.isBad()) {
                said.add(traced.line() + " " + traced.trainee() + " " + traced.decision().outcome());
            }
        }

        @Override
        public void unreadable(LogLine.Unreadable line) {
            said.add(line.toString());
        }
    }

    /** What the long way says; the trainees whom it meets are added. */
    static List<String> longWay(Program program, Roster roster, byte[] log, Set<String> ignored,
            Set<String> trainees) {
        BufferedReader text = new BufferedReader(new LogText(new ByteArrayInputStream(log)));
        CsvLog.Outcome outcome = CsvLog.open(text, program.outline(), ignored);
        return outcome.log().map(lines -> longWay(program, roster, lines, trainees))
                .orElseGet(() -> List.of(outcome.refusal().orElseThrow()));
    }

    /** What the long way says of these lines. */
    public static List<String> longWay(Program program, Roster roster, Iterator<LogLine> lines,
            Set<String> trainees) {
        Told told = new Told(trainees);
        Replay replay = new Replay(program, roster, told);
        Summary summary = replay.run(lines);
        return ended(told.said, summary, trainees, replay::state);
    }

    /** What the quick way says of a CSV log. */
    static List<String> quickWay(Program program, Roster roster, byte[] log, Set<String> ignored,
            Set<String> trainees, int processors, int room) {
        try {
            CsvQuick.Outcome outcome = CsvQuick.open(new ByteArrayInputStream(log), program, ignored);
            if (outcome.refusal().isPresent()) {
                return List.of(outcome.refusal().get());
            }
            return outcome.log().isPresent()
                    ? quickWay(program, roster, outcome.log().get(), trainees, processors, room)
                    : longWay(program, roster, outcome.bytes().readAllBytes(), ignored, new TreeSet<>());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What the quick way says, read in chunks of so many bytes. */
    public static List<String> quickWay(Program program, Roster roster, QuickLog log, Set<String> trainees,
            int processors, int room) {
        Told told = new Told(new TreeSet<>());
        QuickReplay replay = new QuickReplay(program, roster, told, processors, room);
        replay.run(log);
        return ended(told.said, replay.summary(), trainees, replay::state);
    }

    private static List<String> ended(List<String> said, Summary summary, Set<String> trainees,
            Function<String, Optional<State>> states) {
        List<String> all = new ArrayList<>(said);
        all.add(summary.trainees() + " " + summary.sessions() + " " + summary.decisions() + " "
                + summary.overrides() + " " + summary.unreadable() + " " + summary.refused() + " "
                + summary.disagreements());
        summary.first().forEach(traced -> all.add(traced.line() + " " + traced.event() + " "
                + traced.decision().outcome() + traced.decision().reasons() + traced.expected()));
        trainees.forEach(trainee -> all.add(trainee + " " + states.apply(trainee)));
        return all.stream().map(QuickRuns::sorted).toList();
    }

    /** A text in which the stages of each state stand by name, for their order is no part of a state. */
    private static String sorted(String text) {
        return LEFT.matcher(text).replaceAll(found -> Matcher.quoteReplacement(Arrays.stream(found.group()
                .substring("left={".length()).split(", ")).sorted().collect(Collectors.joining(", "))));
    }

    /** A text with some changes: oddities put in, bytes taken out, lines repeated, cut off. */
    public static byte[] changed(byte[] text, Random random, int changes) {
        byte[] changed = text;
        for (int i = 0; i < changes; i++) {
            int at = random.nextInt(changed.length + 1);
            changed = switch (random.nextInt(8)) {
                case 0 -> spliced(changed, at, Math.min(changed.length, at + random.nextInt(4)), new byte[0]);
                case 1 -> spliced(changed, at, at, lineAt(changed, at));
                case 2 -> random.nextInt(8) > 0 ? changed : spliced(changed, at, at,
                        new byte[] {(byte) 0xC3});
                case 3 -> random.nextInt(8) > 0 ? changed : spliced(changed, at, changed.length, new byte[0]);
                default -> spliced(changed, at, at, ODDITIES.get(random.nextInt(ODDITIES.size()))
                        .getBytes(StandardCharsets.UTF_8));
            };
        }
        return changed;
    }

    private static byte[] lineAt(byte[] text, int at) {
        int from = at;
        while (from > 0 && text[from - 1] != '\n') {
            from--;
        }
        int to = at;
        while (to < text.length && text[to] != '\n') {
            to++;
        }
        byte[] line = Arrays.copyOfRange(text, from, to + 1);
        line[to - from] = '\n';
        return line;
    }

    private static byte[] spliced(byte[] text, int from, int to, byte[] with) {
        byte[] spliced = new byte[text.length - (to - from) + with.length];
        System.arraycopy(text, 0, spliced, 0, from);
        System.arraycopy(with, 0, spliced, from, with.length);
        System.arraycopy(text, to, spliced, from + with.length, text.length - to);
        return spliced;
    }
}
