package rungwright.measure;

/**
 * What each step of a {@link Formula} makes of what the steps below it made; one method a kind of formula.
 *
 * <p>With numbers for {@code T} it is a calculator, with formulas a rewriting.
 */
public interface Calculus<T> {
    /** What a number makes. */
    T constant(Formula.Constant constant);

    /** What a name makes. */
    T name(Formula.Name name);

    /** What a sum makes. */
    T sum(T left, T right);

    /** What a negation makes. */
    T negated(T inner);

    /** What a product makes. */
    T product(T left, T right);

    /** What a quotient makes; the divisor stands right. */
    T quotient(T left, T right);

    /** What a formula with earlier readings makes; {@code whole} names them and the value without them. */
    T guarded(T inner, Formula.Guarded whole);
}
