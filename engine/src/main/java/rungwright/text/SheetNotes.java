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
import rungwright.step.Status;

/** What is to be noticed about a row of a sheet, a sentence each. */
record SheetNotes() implements SheetRow.Cases<List<String>> {
    @Override
    public List<String> enrolled(SheetRow.Enrolled row) {
        List<String> notes = new ArrayList<>();
        Today today = row.today();
        today.stop().ifPresent(stop -> stopped(notes, stop));
        today.breakMove().ifPresent(move -> notes.add(sentence(SheetWords.after(move))));
        if (row.group() == Group.RESTING) {
            notes.add("Due on " + SheetWords.day(today.due().orElseThrow()) + ".");
        }
        marks(notes, row.marks());
        return notes;
    }

    private void stopped(List<String> notes, Today.Stop stop) {
        notes.add("Stopped since " + SheetWords.day(stop.since())
                + stop.rule().map(rule -> " (" + Shown.text(rule) + ")").orElse("")
                + ": stop, and seek medical help. No session until a professional has agreed to one.");
        stop.say().ifPresent(say -> notes.add(Shown.whole(say)));
    }

    private void marks(List<String> notes, Marks marks) {
        if (marks.stalled()) {
            notes.add("Stalled: " + Count.of(marks.sinceAdvance(), "session") + " without an advance.");
        }
        marks.movedByCoach().ifPresent(move -> notes.add(of(move)));
        marks.toldOtherwise().ifPresent(told -> notes.add(of(told)));
        if (marks.refused() > 0) {
            notes.add("The spec as it is now refuses " + Count.of(marks.refused(), "entry", "entries")
                    + " of the journal.");
        }
        marks.torn().ifPresent(torn -> notes.add(of(torn)));
    }

    private static String of(Marks.CoachMove move) {
        return "Moved by the coach" + move.by().map(by -> " (" + Shown.text(by) + ")").orElse("") + " on "
                + SheetWords.day(move.date()) + ", not by the program: " + Shown.whole(move.why());
    }

    private static String of(Told told) {
        String place = told.status() == Status.REACHED ? "at the goal" : "at " + SheetWords.place(told.at());
        return "Told otherwise: version " + Shown.text(told.program().version()) + " last had them " + place
                + (told.status() == Status.STOPPED ? ", stopped" : "")
                + "; the spec as it is now makes this of the same history.";
    }

    private static String of(Contents.Torn torn) {
        return "The writing of line " + torn.line() + " of the journal never ended; nobody was told that it"
                + " is recorded.";
    }

    @Override
    public List<String> notEnrolled(SheetRow.NotEnrolled row) {
        List<String> notes = new ArrayList<>();
        Optional<LocalDate> from = row.from();
        notes.add(from.map(day -> "Starts on " + SheetWords.day(day) + ".")
                .orElse("The journal holds no enrolment."));
        row.torn().ifPresent(torn -> notes.add(of(torn)));
        return notes;
    }

    @Override
    public List<String> broken(SheetRow.Broken row) {
        return List.of(sentence(row.trouble().word() + ": " + row.reason()));
    }

    private static String sentence(String small) {
        return small.substring(0, 1).toUpperCase(Locale.ROOT) + small.substring(1) + ".";
    }
}
