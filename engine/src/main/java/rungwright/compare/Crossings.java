package rungwright.compare;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.journal.Contents;
import rungwright.journal.Entry;
import rungwright.journal.Fold;
import rungwright.journal.Happening;
import rungwright.journal.NamedStore;
import rungwright.program.Instead;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.ProgramId;
import rungwright.step.State;
import rungwright.step.Status;
import rungwright.step.Stepper;
import rungwright.step.Trainee;

/**
 * Says of people in mid-program what becomes of them when a new version takes the place of the old one.
 * Nothing is written.
 *
 * @param comparison of the two versions, in which stages of the same meaning are the same
 * @param meant which stages those are that nobody said are the same
 * @param day the day on which they would be carried over; for who had a later event, the day of that
 */
public record Crossings(Comparison comparison, Renames meant, LocalDate day) {
    /** Of two versions that are compared. */
    public static Crossings of(Comparison comparison, LocalDate day) {
        Renames meant = comparison.perhapsRenamed();
        return new Crossings(meant.equals(Renames.NONE) ? comparison : Comparison.of(comparison.old(),
                comparison.changed(), comparison.renames().and(meant)), meant, day);
    }

    /**
     * What becomes of one person.
     *
     * @param more facts and assessments that the new version asks for; what their journal knows, it knows
     *     better
     */
    public Person of(NamedStore journal, Trainee more) {
        String name = journal.name();
        try {
            Contents contents = journal.store().read();
            return new Person(journal, contents, contents.damage().map(damage -> damaged(name, damage))
                    .orElseGet(() -> of(name, contents.entries(), more)));
        } catch (AccessDeniedException e) {
            return unreadable(journal, "you may not read the journal");
        } catch (IOException e) {
            return unreadable(journal, "the journal cannot be opened");
        }
    }

    private static Person unreadable(NamedStore journal, String why) {
        return new Person(journal, Contents.EMPTY, new Crossing.Unknown(journal.name(), why));
    }

    private static Crossing damaged(String name, Contents.Damage damage) {
        return new Crossing.Unknown(name,
                "the journal is damaged, line " + damage.line() + ": " + damage.reason());
    }

    private Crossing of(String name, List<Entry> entries, Trainee more) {
        Fold fold = Fold.of(comparison.old(), entries);
        Optional<Entry> carried = fold.happenings().stream().map(Happening::entry)
                .filter(Entry.Carried.class::isInstance).findFirst();
        Optional<ProgramId> since = carried.map(entry -> entry.told().program());
        if (since.filter(id -> id.fingerprint().equals(comparison.changed().fingerprint())).isPresent()) {
            return new Crossing.Already(name, carried.get().number(),
                    Fold.of(comparison.changed(), entries).state());
        }
        if (since.filter(id -> !id.fingerprint().equals(comparison.old().fingerprint())).isPresent()) {
            return new Crossing.Unknown(name, "entry " + carried.get().number()
                    + " carried them over to " + since.get().show() + ", which is neither of the two");
        }
        return of(name, fold, more);
    }

    private Crossing of(String name, Fold fold, Trainee more) {
        if (fold.otherProgram().isPresent()) {
            return new Crossing.Unknown(name,
                    "its entries are of " + Shown.quoted(fold.otherProgram().get().name()));
        }
        if (fold.state().isEmpty()) {
            return new Crossing.Unknown(name, fold.latest().map(Crossings::refusal)
                    .orElse("they are not enrolled yet"));
        }
        return of(name, fold, fold.state().get(), more);
    }

    private static String refusal(Happening happening) {
        return "the old version refuses entry " + happening.number() + ": "
                + happening.decision().refusal().orElseThrow().message();
    }

    private Crossing of(String name, Fold fold, State state, Trainee more) {
        LocalDate date = day.isBefore(state.latest()) ? state.latest() : day;
        State from = new Renaming(comparison.old(), comparison.renames()).of(state);
        Event.NewVersion event = new Event.NewVersion(date, Optional.empty(), unknown(more, state.trainee()));
        Decision decision = Stepper.step(comparison.changed(), from, event);
        if (decision.isRefused()) {
            return new Crossing.NeedsCoach(name, state, decision.refusal().orElseThrow().message(),
                    Optional.empty());
        }
        Carry carry = new Carry(from, event);
        Optional<Landing> landing = landing(state, decision);
        if (landing.isEmpty()) {
            return new Crossing.NeedsCoach(name, state, why(from), Optional.of(carry));
        }
        State after = decision.after().orElseThrow();
        return new Crossing.Lands(name, carry, landing.get(), Foot.of(comparison.old(), state, date),
                Foot.of(comparison.changed(), after, date), here(after), fold.toldOtherwise());
    }

    private static Trainee unknown(Trainee more, Trainee known) {
        Map<String, List<String>> facts = new LinkedHashMap<>(more.facts());
        facts.keySet().removeAll(known.facts().keySet());
        Map<String, String> assessment = new LinkedHashMap<>(more.assessment());
        assessment.keySet().removeAll(known.assessment().keySet());
        return Trainee.of(facts, assessment);
    }

    /** How they find their place; nothing where all that is left is to start again. */
    private Optional<Landing> landing(State state, Decision decision) {
        Optional<Instead> instead = decision.instead();
        if (instead.isEmpty() || state.status() == Status.REACHED) {
            String stage = state.at().stageName();
            return Optional.of(meant.byOldName().containsKey(stage) ? Landing.SAME_MEANING
                    : comparison.renames().byOldName().containsKey(stage) ? Landing.RENAMED
                    : Landing.SAME_NAME);
        }
        return switch (instead.get()) {
            case SAME_AMOUNT -> Optional.of(Landing.SAME_AMOUNT);
            case EASIER_RUNG -> Optional.of(Landing.EASIER_RUNG);
            case BOTTOM_RUNG -> Optional.of(Landing.BOTTOM_RUNG);
            case START -> Optional.empty();
        };
    }

    /** What is decided otherwise there; at the goal and for who is stopped nothing is decided. */
    private List<Difference> here(State after) {
        if (after.status() != Status.TRAINING) {
            return List.of();
        }
        Here here = new Here(after.at().stageName(), Rungs.of(after.at().rung(),
                Stepper.rungs(comparison.changed(), after)));
        return comparison.differences().stream().filter(each -> each.match(here)).toList();
    }

    private String why(State from) {
        boolean there = comparison.changed().outline().stages().stream()
                .anyMatch(stage -> stage.name().equals(from.at().stageName()));
        return there ? "stage " + Shown.quoted(from.at().stageName()) + " has no rung for them any more"
                : "there is no stage " + Shown.quoted(from.at().stageName()) + " any more";
    }
}
