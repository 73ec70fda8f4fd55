package rungwright.step;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import rungwright.program.Repeat;

/**
 * Which of the last sessions in this place met a rule that wants several: the row or window still open.
 *
 * <p>For {@code in a row: 3} after two such sessions it is {@code yes yes}; for {@code within: 2 of 3} after
 * one that met it and one that did not, {@code yes no}. Sessions from before the oldest that met it say
 * nothing more and are not kept, so an empty tally is one without a session.
 *
 * @param code what the counted rule means; a rule of another meaning does not go on with it
 * @param bits the sessions, the latest as the lowest bit
 */
public record Tally(String code, int bits) {
    /** Refuses more sessions than the longest window needs. */
    public Tally {
        if (bits < 0 || bits >= 1 << Repeat.LONGEST - 1) {
            throw new IllegalArgumentException("a tally of at most " + (Repeat.LONGEST - 1) + " sessions");
        }
    }

    /** A tally of no session. */
    public static Tally none(String code) {
        return new Tally(code, 0);
    }

    /** A tally of sessions, the latest last. */
    public static Tally of(String code, List<Boolean> met) {
        int bits = 0;
        for (boolean each : met) {
            if (bits >= 1 << Repeat.LONGEST - 2) {
                throw new IllegalArgumentException("too many sessions: " + met.size());
            }
            bits = bits << 1 | (each ? 1 : 0);
        }
        return new Tally(code, bits);
    }

    /** The sessions from the oldest that met the rule to the latest. */
    public List<Boolean> sessions() {
        List<Boolean> sessions = new ArrayList<>();
        for (int left = bits; left != 0; left >>= 1) {
            sessions.add((left & 1) == 1);
        }
        Collections.reverse(sessions);
        return List.copyOf(sessions);
    }

    /** How many sessions it tells of. */
    public int length() {
        return Integer.SIZE - Integer.numberOfLeadingZeros(bits);
    }

    /** How many of them met the rule. */
    public int met() {
        return Integer.bitCount(bits);
    }

    /** The tally after a session that met the rule or did not, as far as {@code repeat} looks back. */
    Tally after(boolean meets, Repeat repeat) {
        if (repeat.row() && !meets) {
            return none(code);
        }
        int window = (1 << repeat.of() - 1) - 1;
        return new Tally(code, (bits << 1 | (meets ? 1 : 0)) & window);
    }

    /** Whether it is one that a rule with this repeat can leave. */
    boolean fits(Repeat repeat) {
        return length() < repeat.of() && met() < repeat.of() && (!repeat.row() || met() == length());
    }
}
