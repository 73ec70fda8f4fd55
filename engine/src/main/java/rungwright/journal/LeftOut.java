package rungwright.journal;

import rungwright.finding.Shown;
import rungwright.step.Refusal;

/**
 * Something that a cohort was meant to hold and does not.
 *
 * @param name a trainee, or a line of a log; may be empty
 */
public record LeftOut(String name, Cause cause) {
    /** The cause in plain words: {@code line 2 is damaged: its check does not fit}. */
    public String reason() {
        return cause.match(new InEnglish());
    }

    /** Why it is left out. */
    public sealed interface Cause {
        /** Answers by the kind of cause. */
        <R> R match(Cases<R> cases);
    }

    /** A journal that cannot be opened. */
    public record Unopened() implements Cause {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.unopened();
        }
    }

    /** A journal without an enrolment. */
    public record NotEnrolled() implements Cause {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.notEnrolled();
        }
    }

    /** A journal that is damaged before its end. */
    public record Damaged(Contents.Damage damage) implements Cause {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.damaged(damage);
        }
    }

    /** A journal of another program. */
    public record OtherProgram(String program) implements Cause {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.otherProgram(program);
        }
    }

    /** A trainee whose every event was refused, the last one so. */
    public record Refused(Refusal refusal) implements Cause {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.refused(refusal);
        }
    }

    /**
     * A line of a log that cannot be read.
     *
     * @param line from 1
     * @param reason in plain words
     */
    public record Unreadable(long line, String reason) implements Cause {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.unreadable(line, reason);
        }
    }

    /** One method a cause. */
    public interface Cases<R> {
        /** The journal cannot be opened. */
        R unopened();

        /** Nobody is enrolled. */
        R notEnrolled();

        /** The journal is damaged. */
        R damaged(Contents.Damage damage);

        /** The journal is of a program of that name. */
        R otherProgram(String program);

        /** Everything was refused. */
        R refused(Refusal refusal);

        /** A line of a log cannot be read. */
        R unreadable(long line, String reason);
    }

    private static final class InEnglish implements Cases<String> {
        @Override
        public String unopened() {
            return "it cannot be opened";
        }

        @Override
        public String notEnrolled() {
            return "not enrolled";
        }

        @Override
        public String damaged(Contents.Damage damage) {
            return "line " + damage.line() + " is damaged: " + damage.reason();
        }

        @Override
        public String otherProgram(String program) {
            return "its entries are of " + Shown.quoted(program);
        }

        @Override
        public String refused(Refusal refusal) {
            return refusal.message();
        }

        @Override
        public String unreadable(long line, String reason) {
            return "line " + line + ": " + reason;
        }
    }
}
