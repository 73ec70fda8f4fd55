package rungwright.journal;

import java.util.List;
import java.util.Optional;

/**
 * What somebody must know of a journal before anything that it comes to.
 *
 * @param damage where it cannot be read
 * @param torn what is left of an entry whose writing never ended
 * @param toldOtherwise what the trainee was told last, where the program makes something else of their
 *     history now
 * @param refused events that were recorded once and that the program now refuses
 */
public record Notices(Optional<Contents.Damage> damage, Optional<Contents.Torn> torn,
        Optional<Told> toldOtherwise, List<Happening> refused) {
    /** Copies the list. */
    public Notices {
        refused = List.copyOf(refused);
    }

    /** Those of a journal and of what it comes to. */
    public static Notices of(Contents contents, Fold fold) {
        return new Notices(contents.damage(), contents.torn(), fold.toldOtherwise(),
                fold.happenings().stream().filter(each -> each.decision().isRefused()).toList());
    }

    /** Whether there is nothing to know. */
    public boolean isEmpty() {
        return damage.isEmpty() && torn.isEmpty() && toldOtherwise.isEmpty() && refused.isEmpty();
    }
}
