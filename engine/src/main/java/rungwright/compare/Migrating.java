package rungwright.compare;

import java.io.IOException;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.journal.Journal;
import rungwright.journal.Note;
import rungwright.journal.OvertakenException;
import rungwright.journal.Written;
import rungwright.program.Program;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.Stepper;

/**
 * Carries people over to a new version, or says what that would do.
 *
 * @param changed the new version
 * @param write whether it is written into the journals
 * @param by who does it
 */
public record Migrating(Program changed, boolean write, Optional<String> by) {
    /**
     * Carries one person over.
     *
     * @param place where they go, for who has no place that follows from the old version
     */
    public Migration of(Person person, Optional<String> place) {
        return person.crossing().match(new Doing(person, place));
    }

    /** What is done in each case. */
    private final class Doing implements Crossing.Cases<Migration> {
        private final Person person;
        private final Optional<String> place;

        Doing(Person person, Optional<String> place) {
            this.person = person;
            this.place = place;
        }

        @Override
        public Migration lands(Crossing.Lands crossing) {
            return write ? written(crossing.carry(), Optional.empty())
                    : Migration.done(person.name(), Migration.Kind.CARRIED, Optional.empty());
        }

        @Override
        public Migration needsCoach(Crossing.NeedsCoach crossing) {
            if (place.isEmpty() || crossing.carry().isEmpty()) {
                return Migration.left(person.name(), crossing.why());
            }
            Carry carry = crossing.carry().get();
            Event.Move move = new Event.Move(carry.event().date(), Optional.empty(), place.get(),
                    "carried over to version " + changed.outline().version());
            Decision carried = Stepper.step(changed, carry.from(), carry.event());
            Decision moved = Stepper.step(changed, carried.after().orElseThrow(), move);
            if (moved.isRefused()) {
                return Migration.left(person.name(), moved.refusal().orElseThrow().message());
            }
            return write ? written(carry, Optional.of(move))
                    : Migration.done(person.name(), Migration.Kind.PLACED, Optional.empty());
        }

        @Override
        public Migration already(Crossing.Already crossing) {
            return Migration.done(person.name(), Migration.Kind.ALREADY, Optional.of(crossing.entry()));
        }

        @Override
        public Migration unknown(Crossing.Unknown crossing) {
            return Migration.left(person.name(), crossing.why());
        }

        private Migration written(Carry carry, Optional<Event.Move> move) {
            try {
                Journal asRead = Journal.of(changed, new AsRead(person.journal().store(), person.read()));
                Written carried = asRead.carry(carry.event(), carry.from(), by);
                return carried instanceof Written.Done done && move.isPresent() ? moved(done, move.get())
                        : carried.match(new Said(person.name(), move.isPresent()));
            } catch (OvertakenException e) {
                return Migration.left(person.name(),
                        "something was recorded in the journal just now; migrate once more");
            } catch (IOException e) {
                return Migration.left(person.name(), String.valueOf(e.getMessage()));
            }
        }

        /** Moves who is carried over to the coach's place; what is written of it stands, and is said. */
        private Migration moved(Written.Done carried, Event.Move move) {
            Note note = by.map(Note.NONE::by).orElse(Note.NONE);
            String half = "carried over by entry " + carried.entry().number() + ", but not moved to "
                    + Shown.quoted(move.to()) + ": ";
            try {
                Written moved = Journal.of(changed, person.journal().store()).record(move, note);
                return moved instanceof Written.Refused refused
                        ? Migration.left(person.name(), half + refused.reason())
                        : carried.match(new Said(person.name(), true));
            } catch (IOException e) {
                return Migration.left(person.name(), half + e.getMessage());
            }
        }
    }

    /** What became of the entry. */
    private record Said(String name, boolean placed) implements Written.Cases<Migration> {
        @Override
        public Migration done(Written.Done written) {
            return Migration.done(name, placed ? Migration.Kind.PLACED : Migration.Kind.CARRIED,
                    Optional.of(written.entry().number()));
        }

        @Override
        public Migration already(Written.Already written) {
            return Migration.done(name, Migration.Kind.ALREADY, Optional.of(written.number()));
        }

        @Override
        public Migration refused(Written.Refused written) {
            return Migration.left(name, written.reason());
        }
    }
}
