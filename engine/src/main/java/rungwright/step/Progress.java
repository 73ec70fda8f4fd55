package rungwright.step;

/**
 * How far a rule that wants several sessions has got with this one: 1 of 2.
 *
 * @param met sessions that met it, this one included
 * @param wanted how many make it fire
 * @param within how many of the last sessions here are looked at; for a row as many as are wanted
 */
public record Progress(int met, int wanted, int within) {
    /** Whether the rule fired. */
    public boolean isComplete() {
        return met >= wanted;
    }

    /** As people read it: {@code 1 of 2}. */
    public String show() {
        return met + " of " + wanted;
    }
}
