package rungwright.json;

import rungwright.program.Ladder;
import rungwright.program.Limit;
import rungwright.program.Outline;
import rungwright.program.RungChoice;
import rungwright.program.Target;

/** Targets and ladders, for a stepper that is not ours: stages, facts and assessments by their numbers. */
record TargetPiece(Outline outline) implements Target.Cases<Piece>, RungChoice.Cases<Piece>,
        Limit.Cases<Piece>, Ladder.Cases<Piece> {
    @Override
    public Piece byRungs(Target.ByRungs target) {
        return Piece.tagged("rungs", Piece.number(target.rungs()), Piece.answer(target.up()));
    }

    @Override
    public Piece samePlace() {
        return Piece.tagged("same");
    }

    @Override
    public Piece start() {
        return Piece.tagged("start");
    }

    @Override
    public Piece goal() {
        return Piece.tagged("goal");
    }

    @Override
    public Piece atStage(Target.AtStage target) {
        return Piece.tagged("stage", Piece.number(target.stage()), target.rung().match(this));
    }

    @Override
    public Piece bottom() {
        return Piece.tagged("bottom");
    }

    @Override
    public Piece top() {
        return Piece.tagged("top");
    }

    @Override
    public Piece named(String name) {
        return Piece.tagged("named", Piece.text(name));
    }

    @Override
    public Piece firstSingle() {
        return Piece.tagged("single");
    }

    @Override
    public Piece upTo(Limit limit) {
        return Piece.tagged("upto", limit.match(this));
    }

    @Override
    public Piece whereTheyLeftIt() {
        return Piece.tagged("left");
    }

    @Override
    public Piece fixed(Limit.Fixed limit) {
        return Piece.tagged("fixed", Piece.text(limit.amount().toString()));
    }

    @Override
    public Piece share(Limit.Share limit) {
        return Piece.tagged("share", Piece.text(limit.factor().toString()),
                Piece.number(outline.facts().indexOf(limit.fact())));
    }

    @Override
    public Piece assessed(Limit.Assessed limit) {
        return Piece.tagged("assessed", Piece.number(outline.assessments().indexOf(limit.assessment())));
    }

    @Override
    public Piece named(Ladder.Named ladder) {
        return Piece.tagged("named", Piece.texts(ladder.names()));
    }

    @Override
    public Piece amounts(Ladder.Amounts ladder) {
        return Piece.tagged("amounts", Piece.texts(ladder.amounts().stream().map(Object::toString).toList()),
                Piece.text(ladder.unit().symbol()));
    }

    @Override
    public Piece run(Ladder.Run ladder) {
        return Piece.tagged("run", Piece.text(ladder.start().toString()), Piece.text(ladder.step()
                .toString()),
                Piece.text(ladder.unit().symbol()), ladder.end().match(this));
    }

    @Override
    public Piece eachOf(Ladder.EachOf ladder) {
        return Piece.tagged("each", Piece.number(outline.facts().indexOf(ladder.list())),
                Piece.answer(ladder.together()), ladder.then().map(Piece::text).orElseGet(Piece::nothing));
    }
}
