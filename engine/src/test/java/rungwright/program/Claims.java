package rungwright.program;

import java.util.Optional;
import rungwright.verify.Certificate;

/** Certificates of specs that may not be proven, as a faulty first path would write them. */
public final class Claims {
    private Claims() {
    }

    /** What is claimed of a spec whose parts could all be read. */
    public static Optional<Certificate> of(Checked checked) {
        return checked.outline().filter(Outline::whole).flatMap(outline -> Certifier.of(outline, 5_000));
    }
}
