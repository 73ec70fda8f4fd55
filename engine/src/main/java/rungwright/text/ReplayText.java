package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rungwright.finding.Shown;
import rungwright.replay.LogLine;
import rungwright.replay.Summary;
import rungwright.replay.Traced;
import rungwright.step.BreakMove;
import rungwright.step.Decision;
import rungwright.step.Kind;
import rungwright.step.State;
import rungwright.step.Status;

/** A replay in words: a line a decision, under each trainee's name, and at the end what it came to. */
public final class ReplayText {
    private static final int KIND_WIDTH = 9;
    private static final int PLACE_WIDTH = 30;

    private ReplayText() {
    }

    /**
     * The lines of one decision; a move after a break is a line of its own before it. Of several logs,
     * {@code log} is the one that it stands in.
     */
    public static List<String> lines(Traced traced, Optional<String> log) {
        Decision decision = traced.decision();
        List<String> lines = new ArrayList<>();
        decision.outcome().breakMove().ifPresent(move -> lines.add(line(traced, Kind.BREAK.word(), to(move),
                why(move))));
        String place = place(traced.line(), log);
        String why = decision.outcome().refusal().map(refusal -> place + ": " + refusal.message())
                .orElseGet(() -> why(decision));
        String other = EventText.ENGLISH.of(traced.event());
        lines.add(line(traced, decision.kind().word(), decision.after().map(ReplayText::place).orElse(""),
                other.isEmpty() || decision.isRefused() ? why : other));
        if (!traced.agrees().orElse(true)) {
            lines.add("              but " + place + (log.isPresent() ? "" : " of the log") + " expects "
                    + Shown.text(traced.expected().orElseThrow().show()));
        }
        return lines;
    }

    /** A place of the log that cannot be read, and in which of several logs it is. */
    public static String line(LogLine.Unreadable line, Optional<String> log) {
        return "  " + place(line.line(), log) + " refused: " + line.reason();
    }

    private static String place(long line, Optional<String> log) {
        return "line " + line + log.map(name -> " of " + Shown.quoted(name)).orElse("");
    }

    /** That a program asks for facts or assessments, and where they come from. */
    public static String traineesNeeded() {
        return "note: this program asks for facts or assessments; give them with `--trainees FILE`";
    }

    /** What the replay came to, with the first disagreement of each trainee. */
    public static List<String> summary(Summary summary) {
        List<String> lines = new ArrayList<>();
        lines.add(Count.of(summary.trainees(), "trainee") + ", " + Count.of(summary.sessions(), "session")
                + ": " + kinds(summary.decisions()));
        if (summary.overrides() > 0) {
            lines.add("moved by the coach, and not counted among these: " + summary.overrides());
        }
        lines.add(Count.of(summary.refused(), "event") + " refused, " + Count.of(summary.unreadable(),
                "place")
                + " of the log unreadable, " + Count.of(summary.disagreements(), "disagreement"));
        for (Traced traced : summary.first()) {
            Decision decision = traced.decision();
            lines.add("first disagreement of " + Shown.text(traced.trainee()) + ", line " + traced.line()
                    + ", "
                    + traced.event().date());
            lines.add("  the log expects: " + Shown.text(traced.expected().orElseThrow().show()));
            lines.add("  the spec decides: " + decision.kind().word()
                    + decision.after().map(state -> " at " + place(state)).orElse("") + because(decision));
        }
        return lines;
    }

    private static String because(Decision decision) {
        String why = decision.outcome().refusal().map(refusal -> refusal.message())
                .orElseGet(() -> why(decision));
        return why.isEmpty() ? "" : ", because " + why;
    }

    private static String kinds(Map<Kind, Long> decisions) {
        return decisions.entrySet().stream().map(entry -> entry.getValue() + " " + entry.getKey().word())
                .collect(Collectors.joining(", "));
    }

    private static String line(Traced traced, String kind, String place, String why) {
        return ("  " + traced.event().date() + "  " + padded(kind, KIND_WIDTH) + "  " + padded(place,
                PLACE_WIDTH) + "  "
                + why).stripTrailing();
    }

    private static String padded(String text, int width) {
        return String.format(Locale.ROOT, "%-" + width + "s", text);
    }

    static String place(State state) {
        if (state.status() == Status.REACHED) {
            return "goal";
        }
        return Shown.text(state.at().show()) + (state.status() == Status.STOPPED ? " (stopped)" : "");
    }

    static String to(BreakMove move) {
        return move.to().map(place -> Shown.text(place.show())).orElse("goal");
    }

    static String why(BreakMove move) {
        return Count.of(move.daysAway(), "day") + " away: " + Shown.text(move.rule().label());
    }

    /** The rule, how far it has got, and what was logged of what it asks. */
    static String why(Decision decision) {
        return WhyText.ENGLISH.of(decision);
    }
}
