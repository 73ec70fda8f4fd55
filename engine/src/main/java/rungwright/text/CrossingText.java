package rungwright.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import rungwright.compare.Comparison;
import rungwright.compare.Crossing;
import rungwright.compare.Difference;
import rungwright.compare.Foot;
import rungwright.compare.Landing;
import rungwright.finding.Shown;
import rungwright.program.Prescription;
import rungwright.step.BreakMove;
import rungwright.step.State;
import rungwright.step.ToLog;

/**
 * What becomes of people in mid-program under a new version, in words within 80 columns.
 *
 * <pre>
 * Alva, assisted dip, rung 25 kg: the same place.
 * - at reps 7: hold before, advance now
 * Bram, assisted dip, rung 25 kg: to assisted dip, rung 40 kg, the next easier rung, since theirs is gone.
 * Cato, support hold: needs the coach, since there is no stage `support hold` any more.
 * </pre>
 */
public final class CrossingText implements Crossing.Cases<Void> {
    private static final int WIDEST = 80;

    private final Comparison comparison;
    private final List<String> lines = new ArrayList<>();

    private CrossingText(Comparison comparison) {
        this.comparison = comparison;
    }

    /** All of them on one day, with a count at the head. */
    public static List<String> lines(Comparison comparison, LocalDate day, List<Crossing> people,
            Colours colours) {
        CrossingText text = new CrossingText(comparison);
        text.lines.add(colours.strong("People in mid-program, on " + day));
        text.add("", summary(people));
        people.forEach(person -> person.match(text));
        return List.copyOf(text.lines);
    }

    private static String summary(List<Crossing> people) {
        List<Crossing.Lands> landed = people.stream().filter(Crossing.Lands.class::isInstance)
                .map(Crossing.Lands.class::cast).toList();
        long elsewhere = landed.stream().filter(each -> !each.landing().isThere()).count();
        long coach = people.stream().filter(Crossing.NeedsCoach.class::isInstance).count();
        long others = people.size() - landed.size() - coach;
        return Count.of(people.size(), "journal") + ": " + (landed.size() - elsewhere) + " keep their place, "
                + elsewhere + " on another rung, " + coach + " for the coach to place"
                + (others == 0 ? "" : ", " + others + " besides") + ".";
    }

    @Override
    public Void lands(Crossing.Lands person) {
        String to = Places.of(person.after().state());
        lines.add("");
        add("", person(person.name(), person.before().state()) + switch (person.landing()) {
            case SAME_NAME -> "the same place.";
            case RENAMED -> "the same place, now called " + to + ".";
            case SAME_MEANING -> "to " + to + ", which decides the same under another name.";
            case SAME_AMOUNT -> "to " + to + ", which is the same amount.";
            case EASIER_RUNG -> "to " + to + ", the next easier rung, since theirs is gone.";
            case BOTTOM_RUNG -> "to " + to + ", the bottom rung, since theirs is gone.";
        });
        person.told().ifPresent(told -> add("- ", "they were told last to stand at " + Places.of(told)
                + "; the old version as it is now makes something else of their history"));
        next(person);
        return null;
    }

    /** What of the next session is something else for them. */
    private void next(Crossing.Lands person) {
        int before = lines.size();
        person.here().forEach(difference -> difference.match(new Short(comparison, this::item)));
        breakMove(person.before(), person.after());
        prescription(person.before(), person.after());
        logged(person.before(), person.after());
        if (lines.size() == before && person.landing() != Landing.EASIER_RUNG) {
            item("nothing is something else for them at the next session");
        }
    }

    private void breakMove(Foot before, Foot after) {
        Optional<BreakMove> old = before.ahead().breakMove();
        Optional<BreakMove> changed = after.ahead().breakMove();
        String from = old.map(ReplayText::to).orElse("no move");
        String to = changed.map(ReplayText::to).orElse("no move");
        if (!from.equals(to)) {
            item("after the time away: " + from + " before, " + to + " now");
        }
    }

    private void prescription(Foot before, Foot after) {
        Optional<Prescription> changed = after.ahead().next().prescription();
        if (!before.ahead().next().prescription().equals(changed)) {
            item("to do now: " + changed.map(what -> String.join("; ",
                    PrescriptionText.ENGLISH.phrases(what)))
                    .orElse("nothing is prescribed"));
        }
    }

    private void logged(Foot before, Foot after) {
        List<String> old = names(before);
        List<String> changed = names(after);
        List<String> more = changed.stream().filter(name -> !old.contains(name)).toList();
        List<String> less = old.stream().filter(name -> !changed.contains(name)).toList();
        if (!more.isEmpty()) {
            item("to log besides: " + Listed.and(more));
        }
        if (!less.isEmpty()) {
            item("no more to log: " + Listed.and(less));
        }
    }

    private static List<String> names(Foot foot) {
        return foot.ahead().next().log().stream().map(ToLog::measure).map(Shown::text).toList();
    }

    @Override
    public Void needsCoach(Crossing.NeedsCoach person) {
        lines.add("");
        add("", person(person.name(), person.at()) + "needs the coach: " + person.why() + ".");
        return null;
    }

    @Override
    public Void already(Crossing.Already person) {
        lines.add("");
        add("", Shown.text(person.name()) + ": carried over already, by entry " + person.entry()
                + person.at().map(state -> "; at " + Places.of(state)).orElse("") + ".");
        return null;
    }

    @Override
    public Void unknown(Crossing.Unknown person) {
        lines.add("");
        add("", Shown.text(person.name()) + ": nothing can be said; " + person.why() + ".");
        return null;
    }

    private static String person(String name, State state) {
        return Shown.text(name) + ", " + Places.of(state) + ": ";
    }

    private void item(String text) {
        add("- ", text);
    }

    private void add(String lead, String text) {
        lines.addAll(Wrap.after(lead, text, WIDEST));
    }

    /** A difference in one sentence. */
    private record Short(Comparison comparison, Consumer<String> items)
            implements Difference.Cases<Void> {
        @Override
        public Void decided(Difference.Decided difference) {
            items.accept(CompareText.at(difference) + ": "
                    + new OutcomeText(comparison.old().outline(), difference.where().moment())
                            .of(difference.before()) + " before, "
                    + new OutcomeText(comparison.changed().outline(), difference.where().moment())
                            .of(difference.after()) + " now");
            return null;
        }

        @Override
        public Void changed(Difference.Changed difference) {
            items.accept(switch (difference.part()) {
                case LADDER -> "the rungs: ";
                case NEEDED -> "what must be logged: ";
                case STAGE, ORDER, MEASURE, WORKED_OUT, FACT, ASSESSMENT, PRESCRIPTION, WORDS -> "";
            } + difference.before().map(Shown::whole).orElse("none") + " before, "
                    + difference.after().map(Shown::whole).orElse("none") + " now");
            return null;
        }

        @Override
        public Void unsettled(Difference.Unsettled difference) {
            items.accept("not compared: " + difference.why());
            return null;
        }
    }
}
