package rungwright.json;

import java.util.ArrayList;
import java.util.List;
import rungwright.program.Clause;
import rungwright.program.Layer;
import rungwright.program.Outline;
import rungwright.program.Program;
import rungwright.program.Repeat;
import rungwright.program.Rule;
import rungwright.region.Axis;
import rungwright.region.Box;
import rungwright.region.Edge;
import rungwright.region.Interval;

/** A list of rules as its axes and the boxes of each rule, for a stepper that is not ours. */
record LayerPiece(Program program, boolean placing, Said said)
        implements Axis.Cases<Piece> {
    Piece of(Layer layer) {
        List<Piece> boxes = new ArrayList<>();
        int otherwise = -1;
        for (int rule = 0; rule < layer.rules().size(); rule++) {
            if (layer.rules().get(rule).when().otherwise()) {
                otherwise = rule;
            } else {
                for (Box box : layer.boxes(layer.rules().get(rule))) {
                    boxes.add(box(layer, rule, box));
                }
            }
        }
        return Piece.object().with("axes", Piece.list(layer.axes().stream().map(axis -> axis.match(this))
                        .toList()))
                .with("boxes", Piece.list(boxes))
                .with("rules", Piece.list(layer.rules().stream().map(this::rule).toList()))
                .with("otherwise", Piece.number(otherwise));
    }

    /** A box, and in words what it asks of each axis that it narrows. */
    private Piece box(Layer layer, int rule, Box box) {
        List<Piece> sides = new ArrayList<>();
        List<Piece> asks = new ArrayList<>();
        for (int axis = 0; axis < box.axes(); axis++) {
            Interval side = box.along(axis);
            sides.add(Piece.list(Piece.number(side.from()), Piece.number(side.to())));
            if (!side.covers(layer.axes().get(axis).all())) {
                asks.add(Piece.list(Piece.number(axis),
                        Piece.text(phrase(Clause.of(layer.axes().get(axis), side)))));
            }
        }
        return Piece.object().with("rule", Piece.number(rule)).with("sides", Piece.list(sides))
                .with("asks", Piece.list(asks));
    }

    private String phrase(Clause clause) {
        return said.phrases().apply(clause.name(), clause.words());
    }

    private Piece rule(Rule rule) {
        TargetPiece targets = new TargetPiece(outline());
        return Piece.object().with("label", Piece.text(rule.label())).with("kind",
                        Piece.text(rule.kind().word()))
                .with("repeat", of(rule.repeat()))
                .with("to", rule.to().match(targets))
                .with("end", rule.atTheEnd().map(end -> end.match(targets)).orElseGet(Piece::nothing))
                .with("say", rule.say().map(Piece::text).orElseGet(Piece::nothing))
                .with("code", Piece.text(program.code(rule)));
    }

    /** How often, among how many sessions, and whether they stand in a row. */
    static Piece of(Repeat repeat) {
        return Piece.list(Piece.number(repeat.met()), Piece.number(repeat.of()), Piece.answer(repeat.row()));
    }

    private Outline outline() {
        return program.outline();
    }

    @Override
    public Piece grid(Axis.Grid axis) {
        return asked(axis);
    }

    @Override
    public Piece count(Axis.Count axis) {
        return asked(axis).with("count", Piece.list(Piece.number(axis.least()), Piece.number(axis.most())));
    }

    @Override
    public Piece classes(Axis.Classes axis) {
        List<Piece> cuts = new ArrayList<>();
        for (Edge edge : axis.cuts().edges()) {
            cuts.add(Piece.list(Piece.text(edge.at().toString()), Piece.answer(edge.isAbove())));
        }
        return asked(axis).with("cuts", Piece.list(cuts));
    }

    private Piece.Filled asked(Axis axis) {
        return Piece.object().with("name", Piece.text(said.names().apply(axis.quantity().name())))
                .with("of", axis.quantity().match(new QuantityPiece(outline(), placing)));
    }
}
