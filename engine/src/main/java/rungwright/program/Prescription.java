package rungwright.program;

import java.util.List;
import java.util.Optional;
import rungwright.measure.Amount;

/**
 * What to do in a stage, typed and checked, shown to people and never guessed.
 *
 * @param sets how many sets
 * @param reps how many repetitions a set
 * @param work how long a set is held, a time
 * @param load what is lifted, as written, where it does not come from the rung
 * @param tempo how fast
 * @param rest between sets, a time
 * @param effort how hard, as written: {@code 1 to 2 reps in reserve}, {@code RPE 8}
 * @param daysAWeek how often
 * @param cues what to mind
 */
public record Prescription(Optional<String> exercise, Optional<Between> sets, Optional<Between> reps,
        Optional<Between> work, Optional<String> load, Optional<Tempo> tempo, Optional<Between> rest,
        Optional<String> effort, Optional<Between> daysAWeek, List<String> cues) {
    /** Copies the cues. */
    public Prescription {
        cues = List.copyOf(cues);
    }

    /** From one amount to another, or one alone where both are the same: {@code 10 to 30 s}. */
    public record Between(Amount least, Amount most) {
        /** As people write it. */
        public String show() {
            if (least.equals(most)) {
                return most.show();
            }
            return (least.unit() == most.unit() ? least.value().show() : least.show()) + " to " + most.show();
        }
    }

    /** Seconds for lowering, the pause, raising, and the pause after it: {@code 3-0-1-0}. */
    public record Tempo(int lowering, int pause, int raising, int pauseAfter) {
        /** Seconds a repetition takes. */
        public int seconds() {
            return lowering + pause + raising + pauseAfter;
        }

        /** As people write it. */
        public String show() {
            return lowering + "-" + pause + "-" + raising + "-" + pauseAfter;
        }
    }
}
