package rungwright.program;

import java.util.List;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.measure.Amount;
import rungwright.measure.Dimension;

/** Puts a formula together by the usual rules: products before sums, brackets first. */
final class FormulaParser {
    /** More names and numbers than this in one formula, worked-out measures put in, are refused. */
    static final int MOST_PARTS = 1_000;
    private static final int MOST_BRACKETS = 50;

    private final Operands operands;
    private final Divisors divisors;
    private final Troubles troubles;
    private final Place place;
    private final List<FormulaText.Token> tokens;
    private int at;
    private int depth;

    private FormulaParser(List<FormulaText.Token> tokens, Operands operands, Divisors divisors, Place place,
            Troubles troubles) {
        this.divisors = divisors;
        this.tokens = tokens;
        this.operands = operands;
        this.place = place;
        this.troubles = troubles;
    }

    /** The formula, or nothing after saying what is wrong. */
    static Optional<FormulaPart> read(String tidy, Operands operands, Divisors divisors, Place place,
            Troubles troubles) {
        List<FormulaText.Token> tokens = FormulaText.read(tidy, operands.longestFirst());
        FormulaParser parser = new FormulaParser(tokens, operands, divisors, place, troubles);
        tokens.stream().filter(token -> token.kind() == FormulaText.Kind.NAME)
                .forEach(token -> operands.use(token.text()));
        if (tokens.size() > 2 * MOST_PARTS) {
            return parser.tooLarge();
        }
        if (!parser.allKnown()) {
            return Optional.empty();
        }
        Optional<FormulaPart> whole = parser.sum();
        return whole.isPresent() && parser.here().kind() != FormulaText.Kind.END
                ? parser.misplaced("write `+`, `-`, `*` or `/` between two parts") : whole;
    }

    /** Whether all words are names; reports those that are not. Words after a number are a unit. */
    private boolean allKnown() {
        boolean known = true;
        for (int i = 0; i < tokens.size(); i++) {
            FormulaText.Token token = tokens.get(i);
            boolean unit = i > 0 && tokens.get(i - 1).kind() == FormulaText.Kind.NUMBER;
            if (token.kind() == FormulaText.Kind.WORDS && token.isWord() && !unit) {
                operands.unknown(token.text(), place);
                known = false;
            }
        }
        return known;
    }

    private Optional<FormulaPart> sum() {
        Optional<FormulaPart> sum = product();
        while (sum.isPresent() && (here().is("+") || here().is("-"))) {
            boolean minus = next().is("-");
            Optional<FormulaPart> right = product();
            sum = join(sum, right.map(part -> minus ? part.negate() : part));
        }
        return sum;
    }

    private Optional<FormulaPart> join(Optional<FormulaPart> left, Optional<FormulaPart> right) {
        if (left.isEmpty() || right.isEmpty()) {
            return Optional.empty();
        }
        Dimension one = left.get().dimension();
        Dimension other = right.get().dimension();
        if (!one.equals(other)) {
            boolean bare = one.equals(Dimension.NUMBER) || other.equals(Dimension.NUMBER);
            return troubles.refuse(Code.UNIT_MISMATCH, place, DimensionWords.of(one) + " and "
                    + DimensionWords.of(other) + " have no sum or difference",
                    bare ? "give the number its unit, such as `5 kg`" : "add only what counts the same");
        }
        return small(left.get().plus(right.get()));
    }

    private Optional<FormulaPart> product() {
        Optional<FormulaPart> product = factor();
        while (product.isPresent() && (here().is("*") || here().is("/"))) {
            boolean over = next().is("/");
            Optional<FormulaPart> right = factor();
            Optional<FormulaPart> left = product;
            product = right.flatMap(part -> over ? quotient(left.get(), part)
                    : small(left.get().times(part)));
        }
        return product;
    }

    private Optional<FormulaPart> quotient(FormulaPart left, FormulaPart divisor) {
        return divisors.usable(divisor, place).flatMap(part -> small(left.over(part)));
    }

    private Optional<FormulaPart> factor() {
        if (++depth > MOST_BRACKETS) {
            return tooLarge();
        }
        Optional<FormulaPart> factor = here().is("-") ? negated() : here().is("(") ? bracketed() : operand();
        depth--;
        return factor;
    }

    private Optional<FormulaPart> negated() {
        next();
        return factor().map(FormulaPart::negate);
    }

    private Optional<FormulaPart> bracketed() {
        next();
        Optional<FormulaPart> inner = sum();
        if (inner.isPresent() && !here().is(")")) {
            return misplaced("close every bracket, and write `+`, `-`, `*` or `/` between two parts");
        }
        next();
        return inner;
    }

    private Optional<FormulaPart> operand() {
        FormulaText.Token token = next();
        return switch (token.kind()) {
            case NUMBER -> number(token.text());
            case NAME -> operands.part(token.text(), place);
            case WORDS, SIGN, END -> {
                at--;
                yield misplaced("write a name or a number there");
            }
        };
    }

    /** A number; words right after it are taken for a unit that we do not know. */
    private Optional<FormulaPart> number(String text) {
        boolean oddUnit = here().kind() == FormulaText.Kind.WORDS;
        return new AmountReader(troubles).read(oddUnit ? text + " " + here().text() : text, place)
                .map(FormulaPart::of);
    }

    private Optional<FormulaPart> small(FormulaPart part) {
        return part.size() > MOST_PARTS ? tooLarge() : Optional.of(part);
    }

    private Optional<FormulaPart> tooLarge() {
        return troubles.refuse(Code.TOO_LARGE, place, "the formula has over 1,000 parts or 50 brackets in one"
                + " another", "work it out in fewer steps");
    }

    private Optional<FormulaPart> misplaced(String usual) {
        String hint = FormulaHints.of(here().text()).orElse(usual);
        return troubles.refuse(Code.BAD_VALUE, place, "the formula breaks off before "
                + (here().kind() == FormulaText.Kind.END ? "its end" : Shown.quoted(here().text())), hint);
    }

    private FormulaText.Token here() {
        return tokens.get(Math.min(at, tokens.size() - 1));
    }

    private FormulaText.Token next() {
        FormulaText.Token token = here();
        at++;
        return token;
    }
}
