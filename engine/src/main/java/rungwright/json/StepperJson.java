package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.measure.Scale;
import rungwright.measure.Values;
import rungwright.measure.Words;
import rungwright.program.Layer;
import rungwright.program.Outline;
import rungwright.program.Program;
import rungwright.program.Rule;
import rungwright.program.Uses;

/**
 * All of a proven program that decides, as JSON for a stepper elsewhere, such as the one in a page: measures
 * with their grids, ladders, and each list of rules as the boxes it was proven by.
 */
public final class StepperJson {
    private final Program program;
    private final Outline outline;
    private final Said said;

    private StepperJson(Program program, Said said) {
        this.program = program;
        this.said = said;
        this.outline = program.outline();
    }

    /** The program as one line of JSON. */
    public static String text(Program program) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (JsonGenerator json = Form.generator(out)) {
            of(program, Said.AS_WRITTEN).to(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString(StandardCharsets.UTF_8);
    }

    /** The same, with what rules ask said in another way. */
    static Piece of(Program program, Said said) {
        return new StepperJson(program, said).whole();
    }

    private Piece whole() {
        LayerPiece layers = new LayerPiece(program, false, said);
        return Piece.object().with("form", Piece.number(Form.NUMBER)).with("name", Piece.text(outline.name()))
                .with("version", Piece.text(outline.version()))
                .with("fingerprint", Piece.text(program.fingerprint()))
                .with("measures", Piece.list(outline.measures().stream().map(StepperJson::measure).toList()))
                .with("assessments", Piece.list(outline.assessments().stream().map(StepperJson::measure)
                        .toList()))
                .with("facts", Piece.list(outline.facts().stream().map(StepperJson::fact).toList()))
                .with("previous", Piece.list(previous()))
                .with("stop", layers.of(program.stop())).with("every", layers.of(program.everyStage()))
                .with("break", program.afterABreak().map(layers::of).orElseGet(Piece::nothing))
                .with("place", program.placement().map(new LayerPiece(program, true, said)::of)
                        .orElseGet(Piece::nothing))
                .with("stages", Piece.list(outline.stages().stream().map(stage -> stage(stage.number()))
                        .toList()));
    }

    private static Piece measure(Measure measure) {
        return Piece.object().with("name", Piece.text(measure.name())).with("set",
                        Piece.answer(measure.bySet()))
                .with("take", measure.take().map(take -> Piece.text(take.word()))
                        .orElseGet(Piece::nothing))
                .with("otherwise", measure.ifNotLogged().isPresent()
                        ? Piece.number(measure.ifNotLogged().getAsLong()) : Piece.nothing())
                .with("ask", measure.ask().map(Piece::text).orElseGet(Piece::nothing))
                .with("values", values(measure.values()));
    }

    private static Piece fact(Fact fact) {
        return Piece.object().with("name", Piece.text(fact.name())).with("list", fact.list()
                        .map(length -> Piece.list(Piece.number(length.least()), Piece.number(length.most())))
                        .orElseGet(Piece::nothing))
                .with("values", values(fact.values()));
    }

    private static Piece values(Values values) {
        return values.match(new Values.Cases<>() {
            @Override
            public Piece scale(Scale scale) {
                return Piece.object().with("least", Piece.text(scale.least().toString()))
                        .with("step", Piece.text(scale.step().toString()))
                        .with("count", Piece.number(scale.count()))
                        .with("unit", Piece.text(scale.unit().symbol()));
            }

            @Override
            public Piece words(Words words) {
                return Piece.object().with("words", Piece.texts(words.names()));
            }
        });
    }

    /** The numbers of the measures whose earlier readings formulas ask for. */
    private List<Piece> previous() {
        return outline.askedEarlier().stream()
                .map(measure -> Piece.number(outline.measures().indexOf(measure))).toList();
    }

    private Piece stage(int number) {
        List<Layer> inForce = List.of(program.stop(), program.everyStage(), program.stage(number));
        List<Piece> counted = new ArrayList<>();
        for (Layer layer : inForce.subList(1, inForce.size())) {
            layer.rules().stream().filter(rule -> !rule.repeat().isOnce())
                    .forEach(rule -> counted.add(counter(rule)));
        }
        return Piece.object().with("name", Piece.text(outline.stages().get(number).name()))
                .with("ladder", outline.stages().get(number).ladder().match(new TargetPiece(outline)))
                .with("rules", new LayerPiece(program, false, said).of(program.stage(number)))
                .with("needed", Piece.list(needed(inForce))).with("counted", Piece.list(counted));
    }

    private Piece counter(Rule rule) {
        return Piece.object().with("label", Piece.text(rule.label()))
                .with("code", Piece.text(program.code(rule)))
                .with("repeat", LayerPiece.of(rule.repeat()));
    }

    private List<Piece> needed(List<Layer> inForce) {
        Set<Measure> used = new LinkedHashSet<>();
        inForce.forEach(layer -> layer.axes().forEach(axis -> used.addAll(Uses.of(axis.quantity()))));
        return outline.measures().stream().filter(used::contains)
                .map(measure -> Piece.number(outline.measures().indexOf(measure))).toList();
    }
}
