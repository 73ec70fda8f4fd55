package rungwright.journal;

import java.time.LocalDate;
import java.util.Optional;
import rungwright.step.Event;

/** Makes the entry that corrects an earlier one. */
record Correcting(Fold fold, int corrects, Optional<Event> instead, LocalDate date, Optional<String> by) {
    Draft entry() {
        Optional<Objection> trouble = trouble();
        if (trouble.isPresent()) {
            return Draft.refused(trouble.get(), fold);
        }
        if (fold.happening(corrects).map(Happening::event).equals(instead)) {
            return Draft.already(lastWord(), fold);
        }
        int number = fold.entries().size() + 1;
        return Draft.of(fold, corrects,
                told -> new Entry.Corrected(number, date, by, corrects, instead, told));
    }

    private Optional<Objection> trouble() {
        return notCorrectable(fold, corrects)
                .or(() -> instead.flatMap(event -> trouble(event, fold.entries().get(corrects - 1))));
    }

    /** Why there is nothing to correct under a number. */
    static Optional<Objection> notCorrectable(Fold fold, int corrects) {
        if (corrects < 1 || corrects > fold.entries().size()) {
            return Optional.of(Objection.of(Objection.Code.NO_ENTRY, "there is no entry " + corrects
                    + "; the journal has " + fold.entries().size(), corrects, fold.entries().size()));
        }
        Entry entry = fold.entries().get(corrects - 1);
        if (entry instanceof Entry.Corrected correction) {
            return Optional.of(Objection.of(Objection.Code.IS_A_CORRECTION, "entry " + corrects
                    + " is a correction itself; correct entry " + correction.corrects(), corrects,
                    correction.corrects()));
        }
        if (fold.earlier().contains(entry)) {
            int carried = Carrying.since(fold).orElseThrow().number();
            return Optional.of(Objection.of(Objection.Code.OTHER_VERSION, "entry " + corrects
                    + " was decided by an earlier version of the program; withdraw entry " + carried
                    + ", which carried the trainee over, and correct it with that version", corrects,
                    carried));
        }
        return Optional.empty();
    }

    private Optional<Objection> trouble(Event event, Entry entry) {
        Event first = fold.firstSaid(corrects).orElseThrow();
        if (event.getClass() != first.getClass()) {
            return Optional.of(Objection.of(Objection.Code.OTHER_KIND, "entry " + corrects
                    + " records something of another kind; withdraw it, and record what happened", corrects));
        }
        int session = Sessions.number(entry);
        Optional<Happening> other = session == 0 ? Optional.empty()
                : Sessions.at(fold, event.date(), session).filter(each -> each.number() != corrects);
        return other.map(each -> Objection.of(Objection.Code.SESSION_TAKEN, "entry " + each.number()
                + " is session " + session + " of " + event.date() + " already", each.number(), session,
                event.date())).or(() -> acrossAChange(event, entry));
    }

    /** Why it may not be: other events would be decided by this version, or fewer than are. */
    private Optional<Objection> acrossAChange(Event event, Entry entry) {
        int number = fold.entries().size() + 1;
        Fold trial = fold.with(new Entry.Corrected(number, date, by, corrects, instead, Untold.ANY));
        boolean isReinstated = fold.happening(corrects).isEmpty()
                && Carrying.since(trial).filter(each -> each.entry().equals(entry)).isPresent();
        if (isReinstated || trial.earlier().equals(fold.earlier())) {
            return Optional.empty();
        }
        return Optional.of(Objection.of(Objection.Code.ACROSS_VERSIONS, "on " + event.date() + " entry "
                + corrects + " would stand on the other side of a change of version; withdraw the entry that"
                + " carried the trainee over, and carry them over again afterwards", event.date(), corrects));
    }

    /** The entry that says already what this correction would say. */
    private int lastWord() {
        return fold.happening(corrects).flatMap(Happening::correction).map(Entry::number)
                .or(() -> fold.withdrawn().stream().filter(each -> each.corrects() == corrects)
                        .map(Entry.Corrected::number).findFirst())
                .orElse(corrects);
    }
}
