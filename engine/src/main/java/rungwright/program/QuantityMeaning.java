package rungwright.program;

import java.util.Optional;
import rungwright.measure.Quantity;
import rungwright.measure.WorkedOut;

/**
 * A quantity as canonical text, by names: what the names mean stands once elsewhere, and words for people
 * nowhere.
 */
final class QuantityMeaning implements Quantity.Cases<String> {
    private static final QuantityMeaning CASES = new QuantityMeaning();

    private QuantityMeaning() {
    }

    static String of(Quantity quantity) {
        return quantity.match(CASES);
    }

    @Override
    public String logged(Quantity.Logged quantity) {
        return "<" + quantity.name() + ">";
    }

    @Override
    public String taken(Quantity.Taken quantity) {
        return "<" + quantity.name() + " by " + quantity.take().word() + ">";
    }

    @Override
    public String inSet(Quantity.InSet quantity) {
        return "<" + quantity.name() + " in a set>";
    }

    @Override
    public String known(Quantity.Known quantity) {
        return "<fact " + quantity.name() + ">";
    }

    @Override
    public String counted(Quantity.Counted quantity) {
        return "<" + quantity.name() + ">";
    }

    @Override
    public String previous(Quantity.Previous quantity) {
        return "<" + quantity.name() + ">";
    }

    @Override
    public String worked(Quantity.Worked quantity) {
        return worked(quantity.measure());
    }

    @Override
    public String workedTaken(Quantity.WorkedTaken quantity) {
        return "<" + worked(quantity.measure()) + " by " + quantity.take().word() + ">";
    }

    /** A worked-out measure by its name; a difference from a share by its formula. */
    private static String worked(WorkedOut measure) {
        Optional<String> share = measure.against().map(against -> measure.formula()
                .fold(new FormulaMeaning()));
        return share.orElse("<" + measure.name() + ">");
    }
}
