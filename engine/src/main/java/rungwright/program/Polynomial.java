package rungwright.program;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import rungwright.measure.Dimension;
import rungwright.measure.Formula;
import rungwright.measure.Ratio;

/**
 * A formula multiplied out, like terms put together: a sum of products of names, each with a factor. A name
 * that stands in it twice may so cancel out: {@code load + body mass - 1.5 * body mass} is {@code load - 0.5
 * * body mass}.
 *
 * <p>What cannot be multiplied out (a sum that divides, a formula with {@code if none}) counts as a name.
 *
 * @param factors the factor of each product; a product is how often each name stands in it, below 0 where it
 * divides
 */
record Polynomial(Map<Map<Formula, Integer>, Ratio> factors) {
    private static final int MOST_PRODUCTS = 200;

    /** A number. */
    static Polynomial of(Ratio number) {
        return new Polynomial(number.signum() == 0 ? Map.of() : Map.of(Map.of(), number));
    }

    /** One name. */
    static Polynomial of(Formula name) {
        return new Polynomial(Map.of(Map.of(name, 1), Ratio.ONE));
    }

    /** The sum, or nothing where it is too long to be of use. */
    Optional<Polynomial> plus(Polynomial other) {
        Map<Map<Formula, Integer>, Ratio> sum = new LinkedHashMap<>(factors);
        other.factors.forEach((product, factor) -> add(sum, product, factor));
        return of(sum);
    }

    /** The product, or nothing where it is too long to be of use. */
    Optional<Polynomial> times(Polynomial other) {
        if (factors.size() * other.factors.size() > MOST_PRODUCTS * MOST_PRODUCTS) {
            return Optional.empty();
        }
        Map<Map<Formula, Integer>, Ratio> products = new LinkedHashMap<>();
        factors.forEach((left, one) -> other.factors.forEach((right, two) -> {
            Map<Formula, Integer> both = new LinkedHashMap<>(left);
            right.forEach((name, times) -> both.merge(name, times, Integer::sum));
            both.values().removeIf(times -> times == 0);
            add(products, both, one.times(two));
        }));
        return of(products);
    }

    private static Optional<Polynomial> of(Map<Map<Formula, Integer>, Ratio> factors) {
        return factors.size() > MOST_PRODUCTS ? Optional.empty() : Optional.of(new Polynomial(factors));
    }

    private static void add(Map<Map<Formula, Integer>, Ratio> sum, Map<Formula, Integer> product,
            Ratio factor) {
        Ratio total = sum.getOrDefault(product, Ratio.ZERO).plus(factor);
        if (total.signum() == 0) {
            sum.remove(product);
        } else {
            sum.put(product, total);
        }
    }

    /** One over it, where it is one product; it is never zero. */
    Optional<Polynomial> inverse() {
        if (factors.size() != 1) {
            return Optional.empty();
        }
        Map.Entry<Map<Formula, Integer>, Ratio> only = factors.entrySet().iterator().next();
        Map<Formula, Integer> turned = new LinkedHashMap<>();
        only.getKey().forEach((name, times) -> turned.put(name, -times));
        return Optional.of(new Polynomial(Map.of(turned, Ratio.ONE.over(only.getValue()))));
    }

    /** As a formula that counts what {@code dimension} says. */
    Formula formula(Dimension dimension) {
        Optional<Formula> sum = Optional.empty();
        for (Map.Entry<Map<Formula, Integer>, Ratio> each : factors.entrySet()) {
            Formula product = product(each.getKey(), each.getValue(), dimension);
            sum = Optional.of(sum.<Formula>map(left -> new Formula.Sum(left, product)).orElse(product));
        }
        return sum.orElse(new Formula.Constant(Ratio.ZERO, dimension));
    }

    private static Formula product(Map<Formula, Integer> names, Ratio factor, Dimension dimension) {
        Optional<Formula> above = powers(names, 1);
        Optional<Formula> below = powers(names, -1);
        Dimension rest = below.map(Formula::dimension).map(dimension::times).orElse(dimension);
        Dimension own = above.map(Formula::dimension).map(rest::over).orElse(rest);
        boolean bare = factor.equals(Ratio.ONE) && own.equals(Dimension.NUMBER) && above.isPresent();
        Formula number = new Formula.Constant(factor, own);
        Formula top = bare ? above.get() : above.<Formula>map(name -> new Formula.Product(number, name))
                .orElse(number);
        return below.<Formula>map(name -> new Formula.Quotient(top, name)).orElse(top);
    }

    /** The product of the names that multiply (sign 1) or divide (sign -1). */
    private static Optional<Formula> powers(Map<Formula, Integer> names, int sign) {
        Optional<Formula> product = Optional.empty();
        for (Map.Entry<Formula, Integer> name : names.entrySet()) {
            for (int i = 0; i < sign * name.getValue(); i++) {
                Formula next = name.getKey();
                product = Optional.of(product.<Formula>map(left -> new Formula.Product(left, next))
                        .orElse(next));
            }
        }
        return product;
    }
}
