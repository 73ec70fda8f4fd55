package rungwright.measure;

import java.util.Optional;

/**
 * A measure that is not logged but worked out from others by a formula that rises or falls steadily in each
 * of them.
 *
 * <p>{@code work time: { from: reps * 4 s }} over a set measure {@code reps} has the formula
 * {@code InSet(reps) * 4} in base units and the take of {@code reps}. A criterion
 * {@code load: at least 75 % of body mass} is proven as the worked-out measure
 * {@code load - 0.75 * body mass}, whose {@code against} is {@code 75 % of body mass}.
 *
 * @param name the coach's name for it; for a share, the name of the measure that is compared
 * @param formula how it is worked out, in base units, with other worked-out measures put in
 * @param take which set speaks where a rule does not say, for one worked out set by set
 * @param unit what people write it in; values are base-unit numbers
 * @param against the share that it is compared with at nought, as written, or empty
 */
public record WorkedOut(
        String name, Formula formula, Optional<Take> take, Unit unit, Optional<String> against) {
    /** Of what it is called and compared with: formulas are long, and looked up by the thousand. */
    @Override
    public int hashCode() {
        return 31 * name.hashCode() + against.hashCode();
    }

    /** Whether it is worked out set by set. */
    public boolean bySet() {
        return formula.parts().stream().anyMatch(part -> part instanceof Quantity.InSet);
    }
}
