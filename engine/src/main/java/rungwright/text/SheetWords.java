package rungwright.text;

import java.util.List;
import rungwright.journal.SheetRow;
import rungwright.journal.Today;

/** Single phrases of a sheet in English; {@link SheetPhrases} has all of them, in a language. */
public final class SheetWords {
    private SheetWords() {
    }

    /** All that is to be done, phrase by phrase; none where nothing is prescribed. */
    public static List<String> phrases(Today today) {
        return today.prescription().map(PrescriptionText.ENGLISH::phrases).orElse(List.of());
    }

    /** What the group and the place do not say: stops, breaks, the coach's own moves, and what is amiss. */
    public static List<SheetNote> notes(SheetRow row) {
        return row.match(new SheetNotes(Wording.ENGLISH));
    }
}
