package rungwright.measure;

import java.util.OptionalLong;

/**
 * The finitely many values a measure or fact can take, in order; each has a position from 0.
 *
 * <p>Everything that is proven is proven over positions, so that no claim rests on rounding.
 */
public sealed interface Values permits Scale, Words {
    /** How many values there are; at least one. */
    long count();

    /** The value at a position, as people write it, with its unit: {@code 91 s}. */
    String show(long position);

    /** The position of the value so written, or nothing where it is not one of them. */
    OptionalLong read(String text);

    /** The unit that values are written in. */
    Unit unit();

    /** The value at a position in base units, as formulas use it; for words the position itself. */
    Ratio base(long position);

    /** Whether sums make sense. */
    boolean isNumeric();

    /** Answers by the kind of values. */
    <R> R match(Cases<R> cases);

    /** One method a kind. */
    interface Cases<R> {
        /** Numbers on a grid. */
        R scale(Scale scale);

        /** Yes or no, or names. */
        R words(Words words);
    }
}
