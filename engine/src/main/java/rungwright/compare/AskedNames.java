package rungwright.compare;

import java.util.Set;
import java.util.TreeSet;
import rungwright.measure.Quantity;

/** The names of all that a question is about: its own, and those of what it is worked out from. */
final class AskedNames {
    private AskedNames() {
    }

    static Set<String> of(Quantity quantity) {
        Set<String> names = new TreeSet<>();
        if (quantity.parts().isEmpty()) {
            names.add(quantity.name().replaceFirst("^previous ", ""));
        }
        quantity.parts().forEach(part -> names.addAll(of(part)));
        return names;
    }
}
