package rungwright.program;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungwright.finding.Shown;
import rungwright.region.Axis;
import rungwright.region.Box;
import rungwright.region.Interval;

/**
 * A box of readings in words: {@code `reps` 5 to 11, `pain` 4 to 5}, and where the language can say it, as
 * criteria to paste: {@code reps: 5 to 11, pain: 4 to 5}. An axis that the box spans wholly is not mentioned.
 */
final class BoxWords {
    private final List<Axis> axes;
    private final Box whole;

    /** Words over axes of which {@code whole} is all that can be. */
    BoxWords(List<Axis> axes, Box whole) {
        this.axes = axes;
        this.whole = whole;
    }

    /** For people; {@code any session} where nothing is narrowed. */
    String words(Box box) {
        List<String> parts = new ArrayList<>();
        for (int axis = 0; axis < axes.size(); axis++) {
            if (isNarrowed(box, axis)) {
                parts.add(words(axes.get(axis), box.along(axis)));
            }
        }
        return parts.isEmpty() ? "any session" : String.join(", ", parts);
    }

    /** As criteria of one {@code when}, or nothing where the language cannot say it in one. */
    Optional<String> criteria(Box box) {
        List<String> parts = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (int axis = 0; axis < axes.size(); axis++) {
            if (isNarrowed(box, axis)) {
                Optional<String> part = criterion(axes.get(axis), box.along(axis));
                if (part.isEmpty() || !names.add(axes.get(axis).quantity().name())) {
                    return Optional.empty();
                }
                parts.add(part.get());
            }
        }
        return parts.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", parts));
    }

    /** One axis for people: {@code `reps` 5 to 11}. */
    static String words(Axis axis, Interval interval) {
        Phrases phrase = Phrases.of(axis, interval);
        String sets = SetWords.of(axis.quantity(), phrase.sided()).orElseGet(() -> " (" + axis.quantity()
                .taking()
                .map(taking -> taking.take().word()).orElse("session") + ")");
        return Shown.quoted(axis.quantity().name()) + " " + phrase.words() + sets;
    }

    /** One axis as a criterion: {@code reps: 5 to 11}. */
    static Optional<String> criterion(Axis axis, Interval interval) {
        Phrases phrase = Phrases.of(axis, interval);
        return SetWords.of(axis.quantity(), phrase.sided()).filter(sets -> phrase.isOnePhrase())
                .map(sets -> Shown.text(axis.quantity().name()) + ": " + phrase.words() + sets);
    }

    private boolean isNarrowed(Box box, int axis) {
        return !box.along(axis).covers(whole.along(axis));
    }
}
