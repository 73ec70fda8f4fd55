package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rungwright.compare.Moved;
import rungwright.compare.Mover;
import rungwright.compare.Parting;
import rungwright.compare.Side;
import rungwright.finding.Shown;
import rungwright.replay.Summary;
import rungwright.step.Decision;
import rungwright.step.State;

/** Whom a changed program moves, in words: a table of movers, and where and why each history parts. */
public final class MovedText {
    private static final int WIDEST = 80;
    private static final int NAME_WIDTH = 14;
    private static final int PLACE_WIDTH = 25;

    private MovedText() {
    }

    /** What two programs make of the same logs. */
    public static List<String> lines(Moved moved, Colours colours) {
        List<String> lines = new ArrayList<>();
        lines.add(colours.strong("What the logs come to"));
        lines.addAll(Wrap.lines(summary(moved), WIDEST));
        leftOut(moved).ifPresent(words -> lines.addAll(Wrap.lines(words, WIDEST)));
        if (!moved.isSame()) {
            lines.add("");
            lines.add(row("trainee", "parts on", "ends, before", "ends, now"));
            moved.movers().forEach(mover -> lines.add(row(Shown.text(mover.trainee()),
                    mover.parting().date().map(Object::toString).orElse("?"), end(mover.before()),
                    mover.elsewhere() ? end(mover.after()) : "the same place")));
            moved.movers().forEach(mover -> lines.addAll(parting(mover)));
            lines.add("");
            lines.addAll(Wrap.lines(after(moved), WIDEST));
        }
        return lines;
    }

    /** What of the logs counts for nothing from the first, if anything does. */
    public static Optional<String> leftOut(Moved moved) {
        boolean whole = !moved.leavesOut() && moved.before().refused() == 0;
        return whole ? Optional.empty() : Optional.of("Counted for nothing: before, "
                + leftOut(moved.before()) + "; now, " + leftOut(moved.after())
                + ". `rungwright replay` says where and why.");
    }

    private static String leftOut(Summary summary) {
        return Count.of(summary.refused(), "event") + " refused and "
                + Count.of(summary.unreadable(), "place") + " of the logs unreadable";
    }

    private static String summary(Moved moved) {
        String all = Count.of(moved.trainees(), "trainee") + ", "
                + Count.of(moved.before().sessions(), "session") + " before, "
                + moved.after().sessions() + " now: ";
        return all + (moved.isSame() ? "every one of them is told the same." : moved.movers().size()
                + (moved.movers().size() == 1 ? " is" : " are") + " told something else, and "
                + (moved.elsewhere() == 0 ? "none" : moved.elsewhere()) + " of them "
                + (moved.elsewhere() < 2 ? "ends" : "end") + " elsewhere.");
    }

    /** A log says what was trained on the old decisions, so that what comes after a parting says less. */
    private static String after(Moved moved) {
        long more = moved.after().refused() - moved.before().refused();
        return "From where a history parts, its sessions are still those trained under the decisions"
                + " of the time" + (more > 0 ? "; " + Count.of(more, "event") + " more than before "
                        + (more == 1 ? "is" : "are") + " refused for that." : ".");
    }

    private static String row(String name, String day, String before, String now) {
        return ("  " + padded(name, NAME_WIDTH) + "  " + padded(day, 10) + "  " + padded(before, PLACE_WIDTH)
                + "  " + now).stripTrailing();
    }

    private static String padded(String text, int width) {
        return String.format(Locale.ROOT, "%-" + width + "s", text);
    }

    private static String end(Optional<State> state) {
        return state.map(ReplayText::place).orElse("not enrolled");
    }

    private static List<String> parting(Mover mover) {
        Parting parting = mover.parting();
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.addAll(Wrap.lines(Shown.text(mover.trainee()) + " is told the same until line "
                + parting.line() + " of " + Shown.text(parting.log())
                + parting.date().map(day -> ", " + day).orElse("") + ":", WIDEST));
        lines.addAll(Wrap.after("  before: ", side(parting.before()), WIDEST));
        lines.addAll(Wrap.after("  now:    ", side(parting.after()), WIDEST));
        return lines;
    }

    private static String side(Optional<Side> side) {
        return side.map(each -> each.decision().map(MovedText::of)
                .orElseGet(() -> "not readable: " + each.trouble().orElse("")))
                .orElse("nothing is made of that line");
    }

    private static String of(Decision decision) {
        String moved = decision.breakMove().map(move -> "after a break to " + ReplayText.to(move) + " ("
                + ReplayText.why(move) + "), then ").orElse("");
        String why = decision.refusal().map(refusal -> refusal.message())
                .orElseGet(() -> ReplayText.why(decision));
        return moved + decision.kind().word()
                + (decision.isRefused() ? "" : decision.after().map(state -> " at " + ReplayText.place(state))
                        .orElse("")) + (why.isEmpty() ? "" : ", because " + why);
    }
}
