package rungwright.criteria;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungwright.measure.Amount;
import rungwright.measure.Formula;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Take;
import rungwright.measure.Unit;
import rungwright.measure.WorkedOut;
import rungwright.spec.MeasureSpec;

/** Reads {@code from}: a sum of products of names, numbers with units, and brackets. */
final class FormulaReader {
    private static final Pattern NUMBER = Pattern.compile(
            "\\d+:\\d\\d|\\d+(?:\\.\\d+)?(?: ?(?:%|(?:s|min|kg|g|lb|m|cm|km)(?![\\p{L}\\d_])))?");

    private final String text;
    private final Names names;
    private final List<Unit> units = new ArrayList<>();
    private int at;

    private FormulaReader(String text, Names names) {
        this.text = text;
        this.names = names;
    }

    static WorkedOut read(MeasureSpec spec, Names names) {
        FormulaReader reader = new FormulaReader(Names.tidy(spec.from().orElseThrow()), names);
        Formula sum = reader.sum();
        if (reader.at < reader.text.length()) {
            throw new IllegalArgumentException("the formula " + reader.text + " breaks off at " + reader.at);
        }
        Unit unit = reader.units.stream().filter(each -> each.dimension().equals(sum.dimension())).findFirst()
                .or(() -> Arrays.stream(Unit.values()).filter(each -> each.factor().equals(Ratio.ONE)
                        && each.dimension().equals(sum.dimension())).findFirst()).orElse(Unit.NONE);
        Formula whole = spec.ifNone().<Formula>map(none -> new Formula.Guarded(sum, Phrases.amount(
                Names.tidy(none), unit))).orElse(sum);
        List<Optional<Take>> takes = whole.parts().stream().filter(part -> part instanceof Quantity.InSet)
                .map(part -> ((Quantity.InSet) part).measure().take()).toList();
        Optional<Take> own = takes.size() == 1 ? takes.get(0) : Optional.empty();
        return new WorkedOut(Names.tidy(spec.name()), whole,
                spec.take().flatMap(take -> Take.read(Names.tidy(take))).or(() -> own), unit,
                Optional.empty());
    }

    private boolean eat(String sign) {
        while (text.startsWith(" ", at)) {
            at++;
        }
        boolean there = text.startsWith(sign, at);
        at += there ? sign.length() : 0;
        return there;
    }

    private Formula sum() {
        Formula sum = product();
        while (true) {
            if (eat("+")) {
                sum = new Formula.Sum(sum, product());
            } else if (eat("-")) {
                sum = new Formula.Sum(sum, new Formula.Negated(product()));
            } else {
                return sum;
            }
        }
    }

    private Formula product() {
        Formula product = factor();
        while (true) {
            if (eat("*")) {
                product = new Formula.Product(product, factor());
            } else if (eat("/")) {
                product = new Formula.Quotient(product, factor());
            } else {
                return product;
            }
        }
    }

    private Formula factor() {
        eat("");
        for (String name : names.longestFirst()) {
            int end = at + name.length();
            if (text.startsWith(name, at) && (end == text.length()
                    || !Character.isLetterOrDigit(text.charAt(end)) && text.charAt(end) != '_')) {
                at = end;
                units.add(names.unit(name));
                return names.part(name);
            }
        }
        if (eat("-")) {
            return new Formula.Negated(factor());
        }
        if (eat("(")) {
            Formula inner = sum();
            return eat(")") ? inner : number();
        }
        return number();
    }

    private Formula number() {
        Matcher number = NUMBER.matcher(text).region(at, text.length());
        if (!number.lookingAt()) {
            throw new IllegalArgumentException("the formula " + text + " breaks off at " + at);
        }
        at = number.end();
        Amount amount = Amount.read(number.group()).orElseThrow(
                () -> new IllegalArgumentException(number.group() + " is no amount"));
        units.add(amount.unit());
        return new Formula.Constant(amount.base(), amount.unit().dimension());
    }
}
