package rungwright.journal;

import java.util.Optional;
import rungwright.step.Decision;
import rungwright.step.Refusal;

/** What became of something that was to be recorded. */
public sealed interface Written {
    /** What the journal comes to now. */
    Fold fold();

    /** Answers by what became of it. */
    <R> R match(Cases<R> cases);

    /**
     * It is recorded, and outlives the process and the power.
     *
     * @param before what the journal came to before
     * @param fold what it comes to with the entry
     */
    record Done(Entry entry, Fold before, Fold fold) implements Written {
        /** The event that was recorded or corrected, as it counts now; nothing where it was withdrawn. */
        public Optional<Happening> happening() {
            int number = entry instanceof Entry.Corrected corrected ? corrected.corrects() : entry.number();
            return fold.happening(number);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.done(this);
        }
    }

    /**
     * The same was recorded before, so there was nothing to add.
     *
     * @param number the entry that holds it
     */
    record Already(int number, Fold fold) implements Written {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.already(this);
        }
    }

    /**
     * Nothing was recorded.
     *
     * @param objection the journal's, where it was that
     * @param decision the program's own refusal, where it was that
     */
    record Refused(Optional<Objection> objection, Optional<Decision> decision, Fold fold) implements Written {
        /** Why, in plain words, with a way out where there is one. */
        public String reason() {
            return objection.map(Objection::message).or(() -> decision.flatMap(Decision::refusal)
                    .map(Refusal::message)).orElseThrow();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.refused(this);
        }
    }

    /** One method a case. */
    interface Cases<R> {
        /** Recorded. */
        R done(Done written);

        /** Recorded before. */
        R already(Already written);

        /** Not recorded. */
        R refused(Refused written);
    }
}
