package rungwright.oracle;

import java.util.List;
import java.util.Optional;
import rungwright.compare.Comparison;
import rungwright.compare.Difference;
import rungwright.program.Checked;
import rungwright.program.Program;

/** A small spec that is proven, a new version of it that is proven too, and what compares them. */
record Compared(Toy toy, Toy newToy, Program old, Program changed, Comparison comparison) {
    /** Those of a seed; nothing where one of the two is not proven. */
    static Optional<Compared> of(int seed, int change) {
        Toy toy = RandomSpecs.sibling(seed, 0);
        Optional<Program> old = Checked.read(ToyYaml.text(toy, seed)).program();
        if (old.isEmpty()) {
            return Optional.empty();
        }
        Toy newToy = RandomChange.of(seed, change);
        return Checked.read(ToyYaml.text(newToy, seed)).program().map(changed -> new Compared(toy, newToy,
                old.get(), changed, Comparison.of(old.get(), changed)));
    }

    /** The readings at which they decide differently. */
    List<Difference.Decided> decided() {
        return comparison.differences().stream().filter(Difference.Decided.class::isInstance)
                .map(Difference.Decided.class::cast).toList();
    }

    /** Whether something is defined otherwise that decides, so that regions are not all there is to tell. */
    boolean isDefinedOtherwise() {
        return comparison.differences().stream().anyMatch(each -> each.decides()
                && !(each instanceof Difference.Decided));
    }
}
