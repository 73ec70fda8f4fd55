package rungwright.step;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Something that happened to one trainee on one day. An event may carry an id, so that the same one sent
 * twice does no harm.
 *
 * <p>Values are text, with or without their unit: {@code "9"}, {@code "20 s"}, {@code "1:30"}, {@code "yes"};
 * blank text is no reading. Whatever is wrong with them is said by the decision.
 */
public sealed interface Event {
    /** The day. */
    LocalDate date();

    /** What tells this event from all others of the trainee, if anything does. */
    Optional<String> id();

    /** Answers by the kind of event. */
    <R> R match(Cases<R> cases);

    /** The trainee starts. */
    record Enrol(LocalDate date, Optional<String> id, Trainee trainee) implements Event {
        /** Without an id. */
        public static Enrol of(LocalDate date, Trainee trainee) {
            return new Enrol(date, Optional.empty(), trainee);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.enrol(this);
        }
    }

    /**
     * A session was trained.
     *
     * @param readings the measures of the session, by name
     * @param sets the measures of each set, by name; no rows count as one set without a reading
     */
    record Session(LocalDate date, Optional<String> id, Map<String, String> readings,
            List<Map<String, String>> sets) implements Event {
        /** Copies the readings. */
        public Session {
            readings = Texts.copy(readings);
            sets = Texts.rows(sets);
        }

        /** Without an id: on 2 March pain 1, sets of 9 and 7 reps. */
        public static Session of(
                LocalDate date, Map<String, String> readings, List<Map<String, String>> sets) {
            return new Session(date, Optional.empty(), readings, sets);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.session(this);
        }
    }

    /**
     * A stopped trainee may go on.
     *
     * @param by who says so
     */
    record Clearance(LocalDate date, Optional<String> id, String by) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.clearance(this);
        }
    }

    /**
     * Facts about the trainee changed, or there is a new assessment. Names that are not given keep their
     * values.
     */
    record FactsChanged(LocalDate date, Optional<String> id, Trainee trainee) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.factsChanged(this);
        }
    }

    /**
     * The coach moves the trainee.
     *
     * @param to where: {@code goal}, {@code start}, {@code stage assisted dip}, {@code stage assisted dip on
     *     rung 40 kg}, {@code on the top rung}, {@code on the first single rung}, {@code where they left it};
     *     or as logs write places: {@code assisted dip / 40 kg}, {@code assisted dip / 2}
     * @param reason why, in the coach's words; not blank
     */
    record Move(LocalDate date, Optional<String> id, String to, String reason) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.move(this);
        }
    }

    /**
     * From here on the trainee follows another version of the program: the one that decides about this event.
     *
     * @param trainee facts and assessments that the new version asks for; names not given keep their values
     */
    record NewVersion(LocalDate date, Optional<String> id, Trainee trainee) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.newVersion(this);
        }
    }

    /** One method a kind of event. */
    interface Cases<R> {
        /** The trainee starts. */
        R enrol(Enrol event);

        /** A session. */
        R session(Session event);

        /** A stopped trainee may go on. */
        R clearance(Clearance event);

        /** Facts changed. */
        R factsChanged(FactsChanged event);

        /** The coach moves the trainee. */
        R move(Move event);

        /** Another version of the program. */
        R newVersion(NewVersion event);
    }
}
