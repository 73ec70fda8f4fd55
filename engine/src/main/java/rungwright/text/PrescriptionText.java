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
record PrescriptionText(Wording wording) {
    static final PrescriptionText ENGLISH = new PrescriptionText(Wording.ENGLISH);

    /** One phrase an item; none where nothing is prescribed. */
    List<String> phrases(Prescription what) {
        List<String> phrases = new ArrayList<>();
        what.exercise().ifPresent(exercise -> phrases.add(Shown.whole(exercise)));
        work(what).ifPresent(phrases::add);
        load(what).ifPresent(phrases::add);
        what.tempo().ifPresent(tempo -> phrases.add(tempo(tempo)));
        what.rest().ifPresent(rest -> phrases.add(say("do.rest", wording.range(rest))));
        what.effort().ifPresent(effort -> phrases.add(say("do.effort", Shown.whole(wording.measured(
                effort)))));
        what.daysAWeek().ifPresent(days -> phrases.add(times("do.days", days)));
        if (!what.cues().isEmpty()) {
            phrases.add(say("do.mind", String.join("; ", what.cues().stream().map(Shown::whole).toList())));
        }
        return phrases;
    }

    /** What is lifted, where the stage says it. */
    Optional<String> load(Prescription what) {
        return what.load().map(load -> say("do.load", Shown.whole(wording.measured(load))));
    }

    /** The sets and what is done in each: {@code 3 sets of 4 to 8 reps}. */
    Optional<String> work(Prescription what) {
        List<String> each = new ArrayList<>();
        what.reps().ifPresent(reps -> each.add(times("do.reps", reps)));
        what.work().ifPresent(work -> each.add(wording.range(work)));
        String one = String.join(", ", each);
        Optional<String> sets = what.sets().map(number -> times("do.sets", number));
        if (sets.isEmpty()) {
            return one.isEmpty() ? Optional.empty() : Optional.of(one);
        }
        return sets.map(number -> one.isEmpty() ? number : say("do.setsOf", number, one));
    }

    private String say(String key, String... values) {
        return wording.rules().say(key, values);
    }

    private String times(String key, Between number) {
        return say(key + (number.show().equals("1") ? ".one" : ".many"), wording.range(number));
    }

    private String tempo(Tempo tempo) {
        return say("do.tempo", tempo.show(), Integer.toString(tempo.lowering()), pause(tempo.pause()),
                Integer.toString(tempo.raising()), pause(tempo.pauseAfter()));
    }

    private String pause(int seconds) {
        return seconds == 0 ? say("do.noPause") : say("do.pause", Integer.toString(seconds));
    }
}
