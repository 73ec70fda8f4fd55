package rungwright.program;

import java.util.List;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.measure.Formula;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Take;
import rungwright.measure.Unit;
import rungwright.measure.WorkedOut;
import rungwright.spec.MeasureSpec;
import rungwright.spec.Text;

/** Makes a worked-out measure from its formula and its other keys. */
final class WorkedOutShape {
    private final MeasureSpec spec;
    private final Troubles troubles;
    private final Steadiness steadiness;

    WorkedOutShape(MeasureSpec spec, Troubles troubles, Steadiness steadiness) {
        this.spec = spec;
        this.troubles = troubles;
        this.steadiness = steadiness;
    }

    /** The measure, or nothing after saying what is wrong. */
    Optional<WorkedPart> read(FormulaPart written, FormulaNames used) {
        Place place = spec.from().orElseThrow().place();
        if (written.formula().parts().isEmpty()) {
            return troubles.refuse(Code.BAD_VALUE, place, "the formula has no measure or fact in it",
                    "write what it is worked out from, such as `reps * 4 s`");
        }
        Optional<Formula> steady = steadiness.steady(written);
        Optional<Optional<Take>> take = take(written.formula(), used);
        Unit unit = written.units().of(written.dimension());
        Optional<Optional<Ratio>> ifNone = ifNone(used, unit);
        if (steady.isEmpty()) {
            return unsteady(written.formula(), place);
        }
        if (take.isEmpty() || ifNone.isEmpty()) {
            return Optional.empty();
        }
        FormulaPart form = new FormulaPart(steady.get(), written.multiplied(), written.units(),
                written.size());
        FormulaPart whole = ifNone.get().map(form::guarded).orElse(form);
        return Optional.of(new WorkedPart(new WorkedOut(Tidy.of(spec.name()), whole.formula(), take.get(),
                unit,
                Optional.empty()), whole));
    }

    private Optional<WorkedPart> unsteady(Formula formula, Place place) {
        List<String> names = Steadiness.unsteady(formula).stream().map(Quantity::name).distinct()
                .map(Shown::quoted).toList();
        return troubles.refuse(Code.NOT_STEADY, place, "the formula cannot be seen to rise everywhere or fall"
                + " everywhere with " + String.join(", ", names),
                "write it with each name once, narrow the ranges"
                + " of its names, or split it into two measures");
    }

    private Optional<Optional<Take>> take(Formula formula, FormulaNames used) {
        Optional<Optional<Take>> take = new MeasureReader(troubles).take(spec);
        boolean bySet = formula.parts().stream().anyMatch(part -> part instanceof Quantity.InSet);
        if (!bySet && spec.take().isPresent() && take.isPresent()) {
            return troubles.refuse(Code.BAD_VALUE, spec.take().get().place(),
                    Shown.quoted(spec.name().value())
                    + " is worked out once a session, so no set of it can be taken", "leave `take` out");
        }
        return spec.take().isPresent() || !bySet ? take : Optional.of(used.onlyTake());
    }

    private Optional<Optional<Ratio>> ifNone(FormulaNames used, Unit unit) {
        if (used.usesPrevious() && spec.ifNone().isEmpty()) {
            return troubles.refuse(Code.MISSING_KEY, spec.place(), Shown.quoted(spec.name().value())
                    + " uses an earlier reading, and the first session has none",
                    "add `if none: 0`, with the value that the first session takes");
        }
        if (spec.ifNone().isEmpty()) {
            return Optional.of(Optional.empty());
        }
        Text text = spec.ifNone().get();
        if (!used.usesPrevious()) {
            return troubles.refuse(Code.BAD_VALUE, text.place(),
                    "`if none` goes with `previous`, and the formula"
                    + " uses no earlier reading", "leave it out");
        }
        return AnyNumber.read(Tidy.of(spec.name()), unit, Tidy.of(text), text.place(), troubles)
                .map(Optional::of);
    }
}
