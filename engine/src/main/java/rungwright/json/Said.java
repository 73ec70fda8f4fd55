package rungwright.json;

import java.util.function.BinaryOperator;
import java.util.function.UnaryOperator;

/**
 * How what rules ask is said to people, where it is not to be said as a spec writes it.
 *
 * @param names what is said of a name: {@code Tage Pause} of {@code days away}
 * @param phrases what is said of a name and a phrase about it: {@code mindestens 8}
 */
public record Said(UnaryOperator<String> names, BinaryOperator<String> phrases) {
    /** As a spec writes it. */
    public static final Said AS_WRITTEN = new Said(name -> name, (name, phrase) -> phrase);
}
