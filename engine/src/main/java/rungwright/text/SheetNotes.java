package rungwright.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.journal.Contents;
import rungwright.journal.Group;
import rungwright.journal.Marks;
import rungwright.journal.SheetRow;
import rungwright.journal.Today;
import rungwright.journal.Told;
import rungwright.step.BreakMove;

/** What is to be noticed about a row of a sheet. */
final class SheetNotes implements SheetRow.Cases<List<SheetNote>> {
    private final Wording wording;
    private final Words words;
    private final List<SheetNote> notes = new ArrayList<>();

    SheetNotes(Wording wording) {
        this.wording = wording;
        this.words = wording.language().words("sheet");
    }

    @Override
    public List<SheetNote> enrolled(SheetRow.Enrolled row) {
        Today today = row.today();
        today.stop().ifPresent(this::stopped);
        today.breakMove().ifPresent(this::moved);
        if (row.group() == Group.RESTING) {
            add(words.say("note.nextDue"), day(today.due().orElseThrow()));
        }
        marks(row.marks());
        return notes;
    }

    private String day(LocalDate day) {
        return wording.language().weekday(day);
    }

    private void stopped(Today.Stop stop) {
        add(words.say("note.stoppedSince", day(stop.since())), words.say("note.stopped"));
        Optional<String> rule = stop.rule().map(label -> Shown.text(wording.label(label)));
        String why = words.say("note.why");
        stop.say().ifPresentOrElse(say -> add(rule.orElse(why), Shown.whole(say)),
                () -> rule.ifPresent(label -> add(why, label)));
    }

    private void moved(BreakMove move) {
        add(words.count("note.afterAway", move.daysAway()), words.say("note.fromTo",
                wording.place(move.from()),
                move.to().map(wording::place).orElseGet(() -> wording.rules().say("target.goal")),
                Shown.text(wording.label(move.rule().label()))));
    }

    private void marks(Marks marks) {
        if (marks.stalled()) {
            add(words.say("note.stalled"), words.count("note.withoutAdvance", marks.sinceAdvance()));
        }
        marks.movedByCoach().ifPresent(move -> add(words.say("note.movedByCoach"), move.by()
                .map(by -> words.say("note.onBy", day(move.date()), Shown.text(by), Shown.whole(move.why())))
                .orElseGet(() -> words.say("note.on", day(move.date()), Shown.whole(move.why())))));
        marks.toldOtherwise().ifPresent(this::toldOtherwise);
        if (marks.refused() > 0) {
            add(words.say("note.changedSpec"), words.count("note.refuses", marks.refused()));
        }
        marks.torn().ifPresent(this::torn);
    }

    private void toldOtherwise(Told told) {
        String version = Shown.text(told.program().version());
        String what = switch (told.status()) {
            case REACHED -> words.say("note.hadThemAtTheGoal", version);
            case STOPPED -> words.say("note.hadThemStopped", version, wording.place(told.at()));
            case TRAINING -> words.say("note.hadThem", version, wording.place(told.at()));
        };
        add(words.say("note.toldOtherwise"), what);
    }

    private void torn(Contents.Torn torn) {
        add(words.say("note.tornEnd"), words.say("note.torn", Long.toString(torn.line())));
    }

    @Override
    public List<SheetNote> notEnrolled(SheetRow.NotEnrolled row) {
        Optional<LocalDate> from = row.from();
        from.ifPresentOrElse(day -> add(words.say("note.starts"), day(day)),
                () -> add(words.say("note.notEnrolled"), words.say("note.noEnrolment")));
        row.torn().ifPresent(this::torn);
        return notes;
    }

    @Override
    public List<SheetNote> broken(SheetRow.Broken row) {
        add(words.say("broken." + row.trouble().word()), Shown.whole(row.reason()));
        return notes;
    }

    private void add(String label, String said) {
        notes.add(new SheetNote(label, said));
    }
}
