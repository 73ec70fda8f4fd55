package rungwright.compare;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Optional;
import java.util.Queue;

/** One trainee's history under two programs, side by side until it parts. */
final class History {
    private final Alike alike;
    private final Queue<Side> before = new ArrayDeque<>();
    private final Queue<Side> after = new ArrayDeque<>();
    private String log = "";
    private Optional<Parting> parting = Optional.empty();

    History(Alike alike) {
        this.alike = alike;
    }

    /** A log of that name begins. */
    void begin(String name) {
        log = name;
    }

    /** One more place of the log under the old program. */
    void before(Side side) {
        add(before, side);
    }

    /** One more place of the log under the new program. */
    void after(Side side) {
        add(after, side);
    }

    private void add(Queue<Side> sides, Side side) {
        if (parting.isEmpty()) {
            sides.add(side);
            while (parting.isEmpty() && !before.isEmpty() && !after.isEmpty()) {
                pair();
            }
        }
    }

    private void pair() {
        int order = before.element().compareTo(after.element());
        if (order < 0) {
            alone(before);
        } else if (order > 0) {
            alone(after);
        } else {
            Side one = before.remove();
            Side other = after.remove();
            if (!isSame(one, other)) {
                part(Optional.of(one), Optional.of(other));
            }
        }
    }

    private boolean isSame(Side one, Side other) {
        return one.decision().isPresent() && other.decision().isPresent()
                ? alike.decisions(one.decision().get(), other.decision().get())
                : one.decision().isEmpty() && other.decision().isEmpty();
    }

    /** A start that only one program gives shows at the session for which it was needed. */
    private void alone(Queue<Side> sides) {
        Side side = sides.remove();
        if (!side.enrolment()) {
            Optional<Side> only = Optional.of(side);
            part(sides == before ? only : Optional.empty(), sides == after ? only : Optional.empty());
        }
    }

    private void part(Optional<Side> one, Optional<Side> other) {
        parting = Optional.of(new Parting(log, day(one).or(() -> day(other)), one, other));
        before.clear();
        after.clear();
    }

    private static Optional<LocalDate> day(Optional<Side> side) {
        return side.flatMap(Side::date);
    }

    /** The log is at its end, so that what only one program made something of stays alone. */
    void end() {
        while (parting.isEmpty() && !before.isEmpty()) {
            alone(before);
        }
        while (parting.isEmpty() && !after.isEmpty()) {
            alone(after);
        }
    }

    Optional<Parting> parting() {
        return parting;
    }
}
