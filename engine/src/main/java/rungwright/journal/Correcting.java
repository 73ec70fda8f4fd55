package rungwright.journal;

import java.time.LocalDate;
import java.util.Optional;
import rungwright.step.Event;

/** Makes the entry that corrects an earlier one. */
record Correcting(Fold fold, int corrects, Optional<Event> instead, LocalDate date, Optional<String> by) {
    Draft entry() {
        Optional<String> trouble = trouble();
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

    private Optional<String> trouble() {
        return notCorrectable(fold, corrects)
                .or(() -> instead.flatMap(event -> trouble(event, fold.entries().get(corrects - 1))));
    }

    /** Why there is nothing to correct under a number. */
    static Optional<String> notCorrectable(Fold fold, int corrects) {
        if (corrects < 1 || corrects > fold.entries().size()) {
            return Optional.of("there is no entry " + corrects + "; the journal has "
                    + fold.entries().size());
        }
        Entry entry = fold.entries().get(corrects - 1);
        if (entry instanceof Entry.Corrected correction) {
            return Optional.of("entry " + corrects + " is a correction itself; correct entry "
                    + correction.corrects());
        }
        if (fold.earlier().contains(entry)) {
            return Optional.of("entry " + corrects + " was decided by an earlier version of the program;"
                    + " withdraw entry " + Carrying.since(fold).orElseThrow().number()
                    + ", which carried the trainee over, and correct it with that version");
        }
        return Optional.empty();
    }

    private Optional<String> trouble(Event event, Entry entry) {
        Event first = fold.firstSaid(corrects).orElseThrow();
        if (event.getClass() != first.getClass()) {
            return Optional.of("entry " + corrects + " records something of another kind; withdraw it, and"
                    + " record what happened");
        }
        int session = Sessions.number(entry);
        Optional<Happening> other = session == 0 ? Optional.empty()
                : Sessions.at(fold, event.date(), session).filter(each -> each.number() != corrects);
        return other.map(each -> "entry " + each.number() + " is session " + session + " of "
                + event.date() + " already").or(() -> acrossAChange(event, entry));
    }

    /** Why it may not be: other events would be decided by this version, or fewer than are. */
    private Optional<String> acrossAChange(Event event, Entry entry) {
        int number = fold.entries().size() + 1;
        Fold trial = fold.with(new Entry.Corrected(number, date, by, corrects, instead, Untold.ANY));
        boolean isReinstated = fold.happening(corrects).isEmpty()
                && Carrying.since(trial).filter(each -> each.entry().equals(entry)).isPresent();
        if (isReinstated || trial.earlier().equals(fold.earlier())) {
            return Optional.empty();
        }
        return Optional.of("on " + event.date() + " entry " + corrects + " would stand on the other side of"
                + " a change of version; withdraw the entry that carried the trainee over, and carry them"
                + " over again afterwards");
    }

    /** The entry that says already what this correction would say. */
    private int lastWord() {
        return fold.happening(corrects).flatMap(Happening::correction).map(Entry::number)
                .or(() -> fold.withdrawn().stream().filter(each -> each.corrects() == corrects)
                        .map(Entry.Corrected::number).findFirst())
                .orElse(corrects);
    }
}
