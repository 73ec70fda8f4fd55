package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.program.Prescription;
import rungwright.program.Prescription.Between;
import rungwright.program.Prescription.Tempo;

/**
 * What to do, in words: the exercise, then {@code 3 sets of 4 to 8 reps}, the load, the tempo, the rest, how
 * hard and how often, then what to mind.
 */
final class PrescriptionText {
    private PrescriptionText() {
    }

    /** One phrase an item; none where nothing is prescribed. */
    static List<String> phrases(Prescription what) {
        List<String> phrases = new ArrayList<>();
        what.exercise().ifPresent(exercise -> phrases.add(Shown.whole(exercise)));
        work(what).ifPresent(phrases::add);
        what.load().ifPresent(load -> phrases.add("load " + Shown.whole(load)));
        what.tempo().ifPresent(tempo -> phrases.add(tempo(tempo)));
        what.rest().ifPresent(rest -> phrases.add("rest " + rest.show() + " between sets"));
        what.effort().ifPresent(effort -> phrases.add("effort: " + Shown.whole(effort)));
        what.daysAWeek().ifPresent(days -> phrases.add(times(days, "day") + " a week"));
        if (!what.cues().isEmpty()) {
            phrases.add("mind: " + String.join("; ", what.cues().stream().map(Shown::whole).toList()));
        }
        return phrases;
    }

    /** The sets and what is done in each: {@code 3 sets of 4 to 8 reps}. */
    static Optional<String> work(Prescription what) {
        List<String> each = new ArrayList<>();
        what.reps().ifPresent(reps -> each.add(times(reps, "rep")));
        what.work().ifPresent(work -> each.add(work.show()));
        String one = String.join(", ", each);
        Optional<String> sets = what.sets().map(number -> times(number, "set"));
        if (sets.isEmpty()) {
            return one.isEmpty() ? Optional.empty() : Optional.of(one);
        }
        return sets.map(number -> one.isEmpty() ? number : number + " of " + one);
    }

    private static String times(Between number, String word) {
        return number.show() + " " + word + (number.show().equals("1") ? "" : "s");
    }

    private static String tempo(Tempo tempo) {
        return "tempo " + tempo.show() + " (" + tempo.lowering() + " s down, " + pause(tempo.pause()) + ", "
                + tempo.raising() + " s up, " + pause(tempo.pauseAfter()) + ")";
    }

    private static String pause(int seconds) {
        return seconds == 0 ? "no pause" : "pause " + seconds + " s";
    }
}
