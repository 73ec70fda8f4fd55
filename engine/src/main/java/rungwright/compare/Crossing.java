package rungwright.compare;

import java.util.List;
import java.util.Optional;
import rungwright.journal.Told;
import rungwright.step.State;

/** What becomes of one person in mid-program when a new version takes the place of the old one. */
public sealed interface Crossing {
    /** The trainee's name, which is that of the journal. */
    String name();

    /** Answers by what becomes of them. */
    <R> R match(Cases<R> cases);

    /**
     * They have a place in the new version.
     *
     * @param carry what carries them over
     * @param before where they stand, by the old version's names, and what they would do next
     * @param after where they come to stand, and what they do next
     * @param here what is decided otherwise in that place
     * @param told what they were told last, where the old version now makes something else of the same
     * history
     */
    record Lands(String name, Carry carry, Landing landing, Foot before, Foot after, List<Difference> here,
            Optional<Told> told) implements Crossing {
        /** Copies the list. */
        public Lands {
            here = List.copyOf(here);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.lands(this);
        }
    }

    /**
     * The new version has no place for them that follows from the old one, so the coach must say where.
     *
     * @param at where they stand under the old version
     * @param why in plain words
     * @param carry what would carry them over, to where they start; nothing where the new version must know
     *     more of them first
     */
    record NeedsCoach(String name, State at, String why, Optional<Carry> carry) implements Crossing {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.needsCoach(this);
        }
    }

    /**
     * They were carried over before.
     *
     * @param entry the entry of the journal that did so
     * @param at where they stand under the new version
     */
    record Already(String name, int entry, Optional<State> at) implements Crossing {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.already(this);
        }
    }

    /**
     * Nothing can be said of the journal.
     *
     * @param why in plain words
     */
    record Unknown(String name, String why) implements Crossing {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.unknown(this);
        }
    }

    /** One method a case. */
    interface Cases<R> {
        /** They have a place. */
        R lands(Lands crossing);

        /** The coach must say where. */
        R needsCoach(NeedsCoach crossing);

        /** Carried over before. */
        R already(Already crossing);

        /** Nothing can be said. */
        R unknown(Unknown crossing);
    }
}
