package rungwright.trial;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.measure.Take;
import rungwright.measure.Values;
import rungwright.spec.Entry;
import rungwright.spec.LadderSpec;
import rungwright.spec.MeasureSpec;
import rungwright.spec.Text;

/** Slips in measures and ladders. */
final class PartSlips {
    private PartSlips() {
    }

    /** Of a measure: what it counts as where it is not logged, which set speaks, how it is worked out. */
    static List<Slip<MeasureSpec>> of(MeasureSpec measure, Optional<Values> values) {
        List<Slip<MeasureSpec>> slips = new ArrayList<>();
        measure.ifNotLogged().ifPresent(text -> neighbours(text, values).forEach(other -> slips.add(
                slip("if not logged", text, other, new MeasureSpec(measure.name(), measure.place(),
                        measure.values(), measure.from(), measure.each(), measure.take(), Optional.of(other),
                        measure.ifNone(), measure.ask())))));
        measure.take().ifPresent(text -> takes(text).forEach(other -> slips.add(slip("take", text, other,
                new MeasureSpec(measure.name(), measure.place(), measure.values(), measure.from(),
                        measure.each(), Optional.of(other), measure.ifNotLogged(), measure.ifNone(),
                        measure.ask())))));
        measure.from().ifPresent(text -> formulas(text).forEach(other -> slips.add(slip("from", text, other,
                new MeasureSpec(measure.name(), measure.place(), measure.values(), Optional.of(other),
                        measure.each(), measure.take(), measure.ifNotLogged(), measure.ifNone(),
                        measure.ask())))));
        measure.ifNone().ifPresent(text -> moved(text).forEach(other -> slips.add(slip("if none", text, other,
                new MeasureSpec(measure.name(), measure.place(), measure.values(), measure.from(),
                        measure.each(), measure.take(), measure.ifNotLogged(), Optional.of(other),
                        measure.ask())))));
        return slips;
    }

    private static Slip<MeasureSpec> slip(String key, Text before, Text after, MeasureSpec changed) {
        return Slip.of(Shown.quoted(key + ": " + before.value()) + " made " + Shown.quoted(after.value()),
                before.place(), changed);
    }

    /** The values before and after one. */
    private static List<Text> neighbours(Text text, Optional<Values> values) {
        List<Text> found = new ArrayList<>();
        values.ifPresent(all -> all.read(text.value()).ifPresent(position -> {
            for (long other = position - 1; other <= position + 1; other += 2) {
                if (other >= 0 && other < all.count()) {
                    found.add(new Text(all.show(other), text.place()));
                }
            }
        }));
        return found;
    }

    private static List<Text> takes(Text text) {
        List<Text> others = new ArrayList<>();
        for (Take take : Take.values()) {
            if (!take.word().equals(Places.tidy(text.value()))) {
                others.add(new Text(take.word(), text.place()));
            }
        }
        return others;
    }

    private static List<Text> moved(Text text) {
        return PhraseSlips.moved(text.value(), Optional.empty()).stream().map(each -> new Text(each,
                text.place()))
                .toList();
    }

    /** With a number moved, and with one sign for another. */
    private static List<Text> formulas(Text text) {
        List<Text> others = new ArrayList<>(moved(text));
        for (List<String> pair : List.of(List.of(" + ", " - "), List.of(" - ", " + "),
                List.of(" * ", " + "), List.of(" / ", " * "))) {
            int at = text.value().indexOf(pair.get(0));
            if (at >= 0) {
                others.add(new Text(text.value().substring(0, at) + pair.get(1)
                        + text.value().substring(at + pair.get(0).length()), text.place()));
            }
        }
        return others;
    }

    /** Of a ladder: two rungs swapped, one left out, an end moved, combinations where there are none. */
    static List<Slip<LadderSpec>> of(LadderSpec ladder) {
        List<Slip<LadderSpec>> slips = new ArrayList<>();
        ladder.rungs().ifPresent(rungs -> {
            if (rungs.isList()) {
                listed(ladder, rungs, slips);
            } else {
                moved(rungs.value()).forEach(other -> slips.add(slip("rungs", ladder, rungs.value(), other,
                        with(ladder, new Entry(rungs.key(), List.of(other), false)))));
            }
        });
        ladder.togetherFirst().ifPresent(text -> {
            Text other = new Text(Places.tidy(text.value()).equals("yes") ? "no" : "yes", text.place());
            slips.add(slip("together first", ladder, text, other, new LadderSpec(ladder.name(),
                    ladder.rungs(), ladder.eachOf(), Optional.of(other), ladder.then())));
        });
        ladder.then().ifPresent(text -> slips.add(Slip.of(Shown.quoted("then: " + text.value()) + " left out",
                text.place(), new LadderSpec(ladder.name(), ladder.rungs(), ladder.eachOf(),
                        ladder.togetherFirst(), Optional.empty()))));
        return slips;
    }

    private static void listed(LadderSpec ladder, Entry rungs, List<Slip<LadderSpec>> slips) {
        for (int i = 0; i < rungs.values().size(); i++) {
            Place place = rungs.values().get(i).place();
            List<Text> fewer = new ArrayList<>(rungs.values());
            Text out = fewer.remove(i);
            slips.add(Slip.of("rung " + Shown.quoted(out.value()) + " left out", place,
                    with(ladder, new Entry(rungs.key(), fewer, true))));
            if (i > 0) {
                List<Text> swapped = new ArrayList<>(rungs.values());
                Collections.swap(swapped, i - 1, i);
                slips.add(Slip.of("rungs " + Shown.quoted(swapped.get(i).value()) + " and "
                        + Shown.quoted(swapped.get(i - 1).value()) + " swapped", place,
                        with(ladder, new Entry(rungs.key(), swapped, true))));
            }
        }
    }

    private static LadderSpec with(LadderSpec ladder, Entry rungs) {
        return new LadderSpec(ladder.name(), Optional.of(rungs), ladder.eachOf(), ladder.togetherFirst(),
                ladder.then());
    }

    private static Slip<LadderSpec> slip(String key, LadderSpec ladder, Text before, Text after,
            LadderSpec changed) {
        return Slip.of(Shown.quoted(ladder.name().value()) + ": " + Shown.quoted(key + ": " + before.value())
                + " made " + Shown.quoted(after.value()), before.place(), changed);
    }
}
