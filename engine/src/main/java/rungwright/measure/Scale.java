package rungwright.measure;

import java.math.BigInteger;
import java.util.OptionalLong;

/**
 * Numbers on a grid: {@code least}, then upwards by {@code step}, {@code count} values in all, in
 * {@code unit}.
 *
 * <p>Added weight of 0 to 40 kg by 1.25 kg is {@code least 0, step 1.25, count 33}; 3 kg is not one of them.
 */
public record Scale(Ratio least, Ratio step, long count, Unit unit) implements Values {
    /** Refuses a step that is not above zero, and an empty grid. */
    public Scale {
        if (step.signum() <= 0) {
            throw new IllegalArgumentException("step must be above zero, was " + step);
        }
        if (count < 1) {
            throw new IllegalArgumentException("a scale has at least one value, was " + count);
        }
    }

    /** Of the number of values: scales are few, and looked up by the thousand. */
    @Override
    public int hashCode() {
        return Long.hashCode(count);
    }

    /** The greatest value, in {@code unit}. */
    public Ratio greatest() {
        return at(count - 1);
    }

    /** The value at a position, in {@code unit}. */
    public Ratio at(long position) {
        return least.plus(step.times(position));
    }

    /** The position of a value given in {@code unit}, or nothing where it is off the grid or out of range. */
    public OptionalLong position(Ratio value) {
        Ratio steps = value.minus(least).over(step);
        boolean fits = steps.isWhole() && steps.signum() >= 0
                && steps.numerator().compareTo(BigInteger.valueOf(count)) < 0;
        return fits ? OptionalLong.of(steps.numerator().longValueExact()) : OptionalLong.empty();
    }

    @Override
    public String show(long position) {
        return unit.show(at(position));
    }

    @Override
    public OptionalLong read(String text) {
        return Amount.read(text).flatMap(amount -> amount.in(unit)).map(this::position)
                .orElse(OptionalLong.empty());
    }

    @Override
    public Ratio base(long position) {
        return at(position).times(unit.factor());
    }

    @Override
    public boolean isNumeric() {
        return true;
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.scale(this);
    }
}
