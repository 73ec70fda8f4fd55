package rungwright.compare;

import java.util.List;
import java.util.Optional;
import rungwright.program.Clause;

/** One thing in which two programs are not the same. */
public sealed interface Difference {
    /**
     * Whether some trainee is told something else because of it; if not, only words or prescriptions differ.
     */
    boolean decides();

    /** Answers by the kind of difference. */
    <R> R match(Cases<R> cases);

    /**
     * Readings at which the two decide differently.
     *
     * @param regions any of these, each of clauses that must all hold; one without clauses is any session
     * @param whole false where there are more regions than are listed
     * @param witness a trainee and session that both programs decided, differently; nothing where none was
     *     found, so that the two may come to the same after all
     */
    record Decided(Where where, List<List<Clause>> regions, boolean whole, Answer before, Answer after,
            Optional<Proof> witness) implements Difference {
        /** Copies the regions. */
        public Decided {
            regions = regions.stream().map(List::copyOf).toList();
        }

        /** The same with a trainee and session, if there is one. */
        Decided with(Optional<Proof> proof) {
            return new Decided(where, regions, whole, before, after, proof);
        }

        @Override
        public boolean decides() {
            return true;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.decided(this);
        }
    }

    /**
     * Something that is defined otherwise, or only in one of the two.
     *
     * @param name what it is the name of, in the new program where it is there
     * @param before in words; nothing where the old program does not have it
     * @param after in words; nothing where the new program does not have it
     */
    record Changed(Part part, String name, Optional<String> before, Optional<String> after)
            implements Difference {
        @Override
        public boolean decides() {
            return part.decides();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.changed(this);
        }
    }

    /**
     * Something that could not be compared, so that it counts as different.
     *
     * @param why in plain words
     */
    record Unsettled(Where where, String why) implements Difference {
        @Override
        public boolean decides() {
            return true;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.unsettled(this);
        }
    }

    /** One method a kind. */
    interface Cases<R> {
        /** Decided differently. */
        R decided(Decided difference);

        /** Defined differently. */
        R changed(Changed difference);

        /** Not compared. */
        R unsettled(Unsettled difference);
    }
}
