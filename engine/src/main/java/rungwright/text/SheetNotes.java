package rungwright.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.journal.Contents;
import rungwright.journal.Group;
import rungwright.journal.Marks;
import rungwright.journal.SheetRow;
import rungwright.journal.Today;
import rungwright.journal.Told;
import rungwright.step.BreakMove;
import rungwright.step.Status;

/** What is to be noticed about a row of a sheet. */
final class SheetNotes implements SheetRow.Cases<List<SheetNote>> {
    private final List<SheetNote> notes = new ArrayList<>();

    @Override
    public List<SheetNote> enrolled(SheetRow.Enrolled row) {
        Today today = row.today();
        today.stop().ifPresent(this::stopped);
        today.breakMove().ifPresent(this::moved);
        if (row.group() == Group.RESTING) {
            add("Next due", SheetWords.day(today.due().orElseThrow()));
        }
        marks(row.marks());
        return notes;
    }

    private void stopped(Today.Stop stop) {
        add("Stopped since " + SheetWords.day(stop.since()),
                "stop, and seek medical help. No session until a professional has agreed to one");
        String rule = stop.rule().map(Shown::text).orElse("Why");
        stop.say().ifPresentOrElse(say -> add(rule, Shown.whole(say)),
                () -> stop.rule().ifPresent(label -> add("Why", rule)));
    }

    private void moved(BreakMove move) {
        add("After " + Count.of(move.daysAway(), "day") + " away", "from " + SheetWords.place(move.from())
                + " to " + move.to().map(SheetWords::place).orElse("the goal")
                + " (" + Shown.text(move.rule().label()) + ")");
    }

    private void marks(Marks marks) {
        if (marks.stalled()) {
            add("Stalled", Count.of(marks.sinceAdvance(), "session") + " without an advance");
        }
        marks.movedByCoach().ifPresent(move -> add("Moved by the coach", "on " + SheetWords.day(move.date())
                + move.by().map(by -> " by " + Shown.text(by)).orElse("") + ", not by the program: "
                + Shown.whole(move.why())));
        marks.toldOtherwise().ifPresent(this::toldOtherwise);
        if (marks.refused() > 0) {
            add("Changed spec", "it refuses " + Count.of(marks.refused(), "entry", "entries")
                    + " that the journal holds");
        }
        marks.torn().ifPresent(this::torn);
    }

    private void toldOtherwise(Told told) {
        String place = told.status() == Status.REACHED ? "at the goal" : "at " + SheetWords.place(told.at());
        add("Told otherwise", "version " + Shown.text(told.program().version()) + " last had them " + place
                + (told.status() == Status.STOPPED ? ", stopped" : "")
                + "; the spec as it is now makes this of the same history");
    }

    private void torn(Contents.Torn torn) {
        add("Torn end", "the writing of line " + torn.line() + " of the journal never ended; nobody was told"
                + " that it is recorded");
    }

    @Override
    public List<SheetNote> notEnrolled(SheetRow.NotEnrolled row) {
        Optional<LocalDate> from = row.from();
        from.ifPresentOrElse(day -> add("Starts", SheetWords.day(day)),
                () -> add("Not enrolled", "the journal holds no enrolment"));
        row.torn().ifPresent(this::torn);
        return notes;
    }

    @Override
    public List<SheetNote> broken(SheetRow.Broken row) {
        String word = row.trouble().word();
        add(word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1), Shown.whole(row.reason()));
        return notes;
    }

    private void add(String label, String words) {
        notes.add(new SheetNote(label, words));
    }
}
