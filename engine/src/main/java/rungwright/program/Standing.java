package rungwright.program;

/**
 * Where one trainee stands: a stage and a rung of it.
 *
 * <p>With bands of 40 and 25 kg, {@code new Standing(1, "assisted dip", 2, "40 kg")} is the second rung of
 * the second stage, after both bands together.
 *
 * @param stage from 0, in the order of the spec
 * @param rung from 1, the easiest; 0 only for a trainee at the goal who comes from no place
 * @param rungName empty for a stage without a ladder
 */
public record Standing(int stage, String stageName, int rung, String rungName) {
    /** Refuses numbers under the first. */
    public Standing {
        if (stage < 0 || rung < 0) {
            throw new IllegalArgumentException("no such place: stage " + stage + ", rung " + rung);
        }
    }

    /** A rung of a stage. */
    public static Standing on(Stage stage, Rung rung) {
        return new Standing(stage.number(), stage.name(), rung.number(), rung.name());
    }

    /**
     * Whether both are the same place by name. The number of a rung may change with the trainee's own list: a
     * new band between two others moves the lighter one from 2 to 3, and yet nobody has moved.
     */
    public boolean samePlace(Standing other) {
        return stageName.equals(other.stageName) && rungName.equals(other.rungName);
    }

    /** As logs write it: {@code assisted dip / 40 kg}, or {@code support hold} where there is no ladder. */
    public String show() {
        return rungName.isEmpty() ? stageName : stageName + " / " + rungName;
    }
}
