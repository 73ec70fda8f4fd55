package rungwright.compare;

import java.time.LocalDate;
import java.util.Optional;
import rungwright.replay.LogLine;
import rungwright.replay.Traced;
import rungwright.step.Decision;
import rungwright.step.Event;

/**
 * What one of two programs makes of one place of a log.
 *
 * @param line the line of the log, from 1
 * @param date the day of it, where it could be read
 * @param enrolment whether it is about the trainee's start, which comes before the session on that line
 * @param decision what it decides; nothing where it cannot read that place
 * @param trouble why it cannot, where it cannot
 */
public record Side(long line, Optional<LocalDate> date, boolean enrolment, Optional<Decision> decision,
        Optional<String> trouble) implements Comparable<Side> {
    static Side of(Traced traced) {
        return new Side(traced.line(), Optional.of(traced.event().date()),
                traced.event() instanceof Event.Enrol, Optional.of(traced.decision()), Optional.empty());
    }

    static Side of(LogLine.Unreadable line) {
        return new Side(line.line(), Optional.empty(), false, Optional.empty(), Optional.of(line.reason()));
    }

    /** By its line, and on the same line the start first. */
    @Override
    public int compareTo(Side other) {
        int byLine = Long.compare(line, other.line);
        return byLine != 0 ? byLine : Boolean.compare(other.enrolment, enrolment);
    }
}
