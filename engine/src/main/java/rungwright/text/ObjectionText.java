package rungwright.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rungwright.finding.Shown;
import rungwright.journal.Objection;
import rungwright.program.Outline;

/**
 * Why a journal takes no entry. In English it is what the journal says of it; in another language it is said
 * anew from the code and what it is about.
 */
record ObjectionText(Outline outline, Wording wording) {
    String of(Objection objection) {
        return wording.language() == Language.ENGLISH ? objection.message() : anew(objection);
    }

    /** The objection in the words of the bundle. */
    String anew(Objection objection) {
        List<String> about = objection.subjects();
        Set<Integer> days = days(objection.code());
        List<String> shown = new ArrayList<>();
        for (int each = 0; each < about.size(); each++) {
            shown.add(days.contains(each) ? wording.language().day(LocalDate.parse(about.get(each)))
                    : objection.code() == Objection.Code.OTHER_ID && each == 0 ? Shown.quoted(about.get(each))
                    : about.get(each));
        }
        objection.cause().map(new RefusalText(outline, wording)::of).ifPresent(shown::add);
        return wording.language().words("log").say("objection." + objection.code().word(),
                shown.toArray(String[]::new));
    }

    /** Which of the subjects are days, counted from 0. */
    private static Set<Integer> days(Objection.Code code) {
        return switch (code) {
            case OTHER_READINGS, ACROSS_VERSIONS -> Set.of(0);
            case EARLIER_DAY, BEFORE_THIS_VERSION, BEFORE_THE_LATEST -> Set.of(0, 1);
            case COULD_NOT_STAND -> Set.of(1);
            case SESSION_TAKEN -> Set.of(2);
            case OTHER_ID, NO_ENTRY, IS_A_CORRECTION, OTHER_VERSION, OTHER_KIND, NOBODY_LEFT -> Set.of();
        };
    }
}
