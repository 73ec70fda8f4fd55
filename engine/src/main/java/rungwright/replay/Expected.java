package rungwright.replay;

import java.util.Optional;
import java.util.OptionalInt;
import rungwright.step.Decision;
import rungwright.step.Kind;
import rungwright.step.State;
import rungwright.step.Status;

/**
 * What a log says that a decision should be; what is empty is not compared.
 *
 * <p>{@code hold} and {@code assisted dip / 40 kg} are kind hold, at the rung 40 kg of assisted dip.
 *
 * @param kind the kind of decision
 * @param at where the trainee should stand after it
 */
public record Expected(Optional<Kind> kind, Optional<At> at) {
    /**
     * A place as logs write it: {@code stage}, {@code stage / 3}, {@code stage / name}, or {@code goal}.
     *
     * @param text as it is written
     */
    public record At(String text) {
        private static final String GOAL = "goal";

        /** Whether a trainee in this state stands there. */
        public boolean holds(State state) {
            return holds(state.status() == Status.REACHED, state.at().stageName(), state.at().rung(),
                    state.at().rungName());
        }

        boolean holds(boolean isReached, String stage, int rung, String rungName) {
            if (text.equals(GOAL)) {
                return isReached;
            }
            if (text.equals(stage)) {
                return true;
            }
            int slash = stage.length();
            boolean sameStage = text.startsWith(stage) && text.substring(slash).stripLeading()
                    .startsWith("/");
            return sameStage && isRung(text.substring(text.indexOf('/', slash) + 1).strip(), rung, rungName);
        }

        private static boolean isRung(String written, int rung, String rungName) {
            OptionalInt number = number(written);
            return written.equals(rungName) || number.isPresent() && number.getAsInt() == rung;
        }

        private static OptionalInt number(String text) {
            boolean digits = !text.isEmpty() && text.length() < 10 && text.chars()
                    .allMatch(Character::isDigit);
            return digits ? OptionalInt.of(Integer.parseInt(text)) : OptionalInt.empty();
        }
    }

    /** Whether it is what the decision came to. */
    public boolean agreesWith(Decision decision) {
        return kind.filter(word -> word != decision.kind()).isEmpty()
                && at.filter(place -> decision.after().filter(place::holds).isEmpty()).isEmpty();
    }

    /** Whether the log expects that the event is refused. */
    public boolean isRefusal() {
        return kind.filter(word -> word == Kind.REFUSED).isPresent();
    }

    /** As people read it: {@code hold at assisted dip / 40 kg}. */
    public String show() {
        String place = at.map(where -> "at " + where.text()).orElse("");
        return (kind.map(Kind::word).orElse("") + " " + place).strip();
    }
}
