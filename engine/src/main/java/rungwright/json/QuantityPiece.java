package rungwright.json;

import rungwright.measure.Calculus;
import rungwright.measure.Formula;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Take;
import rungwright.measure.WorkedOut;
import rungwright.program.Outline;

/**
 * What is asked, for a stepper that is not ours: measures, assessments and facts by their numbers.
 *
 * @param placing whether measures are assessments, as the place rules see them
 */
record QuantityPiece(Outline outline, boolean placing) implements Quantity.Cases<Piece>, Calculus<Piece> {
    private Piece.Filled named(String word, Measure measure) {
        int number = (placing ? outline.assessments() : outline.measures()).indexOf(measure);
        return Piece.object().with("q", Piece.text(word)).with("m", Piece.number(number));
    }

    @Override
    public Piece logged(Quantity.Logged quantity) {
        return named("logged", quantity.measure());
    }

    @Override
    public Piece taken(Quantity.Taken quantity) {
        return named("taken", quantity.measure()).with("take", Piece.text(quantity.take().word()));
    }

    @Override
    public Piece inSet(Quantity.InSet quantity) {
        return named("set", quantity.measure());
    }

    @Override
    public Piece known(Quantity.Known quantity) {
        return Piece.object().with("q", Piece.text("known"))
                .with("f", Piece.number(outline.facts().indexOf(quantity.fact())));
    }

    @Override
    public Piece counted(Quantity.Counted quantity) {
        return Piece.object().with("q", Piece.text("counted")).with("name", Piece.text(quantity.name()));
    }

    @Override
    public Piece previous(Quantity.Previous quantity) {
        return named("previous", quantity.measure());
    }

    @Override
    public Piece worked(Quantity.Worked quantity) {
        return workedOut(quantity.measure());
    }

    @Override
    public Piece workedTaken(Quantity.WorkedTaken quantity) {
        Take take = quantity.take();
        return workedOut(quantity.measure()).with("take", Piece.text(take.word()));
    }

    private Piece.Filled workedOut(WorkedOut measure) {
        return Piece.object().with("q", Piece.text("worked")).with("unit", Piece.text(measure.unit()
                .symbol()))
                .with("formula", measure.formula().fold(this));
    }

    @Override
    public Piece constant(Formula.Constant constant) {
        return Piece.tagged("num", Piece.text(constant.amount().toString()));
    }

    @Override
    public Piece name(Formula.Name name) {
        return Piece.tagged("of", name.quantity().match(this));
    }

    @Override
    public Piece sum(Piece left, Piece right) {
        return Piece.tagged("+", left, right);
    }

    @Override
    public Piece negated(Piece inner) {
        return Piece.tagged("-", inner);
    }

    @Override
    public Piece product(Piece left, Piece right) {
        return Piece.tagged("*", left, right);
    }

    @Override
    public Piece quotient(Piece left, Piece right) {
        return Piece.tagged("/", left, right);
    }

    @Override
    public Piece guarded(Piece inner, Formula.Guarded whole) {
        return Piece.tagged("guard", inner, Piece.text(whole.ifNone().toString()));
    }
}
