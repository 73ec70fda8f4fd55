package rungwright.program;

import java.util.LinkedHashMap;
import java.util.Map;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.measure.BuiltIn;
import rungwright.spec.Text;

/** A space of names in which each may stand only once. */
final class NameChecks {
    private final String what;
    private final Map<String, Place> first = new LinkedHashMap<>();
    private final Troubles troubles;

    /** A space of names of things called {@code what} in messages. */
    NameChecks(String what, Troubles troubles) {
        this.what = what;
        this.troubles = troubles;
    }

    /** Whether the name is new here; says so where it is not. */
    boolean isNew(Text text) {
        String name = Tidy.of(text);
        Place before = first.putIfAbsent(name, text.place());
        if (before != null) {
            troubles.add(Finding.of(Code.DUPLICATE_NAME, text.place(), "two " + what + " are named "
                    + Shown.quoted(name)).withHint("give each a name of its own")
                    .withRelated(before, "the first"));
        }
        return before == null;
    }

    /** Whether the name is no built-in; says so where it is one. */
    boolean isFree(Text text) {
        boolean free = BuiltIn.read(Tidy.of(text)).isEmpty();
        if (!free) {
            troubles.add(Code.DUPLICATE_NAME, text.place(), Shown.quoted(text.value())
                    + " is built in and can be asked about as it is", "choose another name");
        }
        return free;
    }
}
