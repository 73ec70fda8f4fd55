package rungwright.program;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.measure.Amount;
import rungwright.measure.Fact;
import rungwright.measure.Ratio;
import rungwright.measure.Unit;
import rungwright.spec.Entry;
import rungwright.spec.LadderSpec;
import rungwright.spec.Text;

/** Reads a ladder. */
final class LadderReader {
    /** More rungs than this on one ladder are refused. */
    static final int MOST_RUNGS = 1_000;

    private final Vocabulary names;
    private final Troubles troubles;

    LadderReader(Vocabulary names, Troubles troubles) {
        this.names = names;
        this.troubles = troubles;
    }

    /** The ladder, or nothing after saying what is wrong. */
    Optional<Ladder> read(LadderSpec spec) {
        if (spec.eachOf().isPresent()) {
            return eachOf(spec, spec.eachOf().get());
        }
        return spec.rungs().flatMap(this::rungs);
    }

    private Optional<Ladder> rungs(Entry entry) {
        if (!entry.isList()) {
            return new RunReader(names, troubles).read(entry.value());
        }
        if (entry.values().size() > MOST_RUNGS) {
            return troubles.refuse(Code.TOO_LARGE, entry.value().place(), "a ladder has at most 1,000 rungs",
                    "leave some out");
        }
        List<Amount> amounts = entry.values().stream().map(Tidy::of).map(Amount::read)
                .flatMap(Optional::stream)
                .toList();
        return amounts.size() == entry.values().size() ? amounts(entry, amounts) : names(entry);
    }

    private Optional<Ladder> names(Entry entry) {
        Set<String> seen = new HashSet<>();
        for (Text text : entry.values()) {
            String name = Tidy.of(text);
            if (name.isEmpty()) {
                return troubles.refuse(Code.BAD_VALUE, text.place(), "a rung has no name", "give it one");
            }
            if (!seen.add(name)) {
                return duplicate(name, text.place());
            }
        }
        return Optional.of(new Ladder.Named(entry.values().stream().map(Tidy::of).toList()));
    }

    private Optional<Ladder> amounts(Entry entry, List<Amount> amounts) {
        Optional<Unit> unit = SharedUnit.of(amounts, entry.value().place(), troubles);
        if (unit.isEmpty()) {
            return Optional.empty();
        }
        List<Ratio> values = amounts.stream().map(amount -> SharedUnit.in(unit.get(), amount)).toList();
        for (int i = 1; i < values.size(); i++) {
            int order = values.get(i - 1).compareTo(values.get(i));
            Place place = entry.values().get(i).place();
            if (order == 0) {
                return duplicate(unit.get().show(values.get(i)), place);
            }
            if (order > 0) {
                return troubles.refuse(Code.BAD_VALUE, place, "the rung " + unit.get().show(values.get(i))
                        + " stands after " + unit.get().show(values.get(i - 1)),
                        "amounts rise, the easiest first;"
                        + " where more is easier, give the rungs names that are no amounts");
            }
        }
        return Optional.of(new Ladder.Amounts(values, unit.get()));
    }

    private Optional<Ladder> duplicate(String name, Place place) {
        return troubles.refuse(Code.DUPLICATE_NAME, place, "the rung " + Shown.quoted(name)
                + " is there twice",
                "name each rung once");
    }

    private Optional<Ladder> eachOf(LadderSpec spec, Text list) {
        Optional<Fact> fact = new FactFinder(names, troubles).find(Tidy.of(list), list.place())
                .flatMap(found -> usable(found, list));
        Optional<Boolean> together = spec.togetherFirst().map(this::yesOrNo).orElse(Optional.of(false));
        Optional<Optional<String>> then = then(spec);
        if (fact.isEmpty() || together.isEmpty() || then.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Ladder.EachOf(fact.get(), together.get(), then.get()));
    }

    private Optional<Fact> usable(Fact fact, Text list) {
        if (!fact.isList()) {
            return troubles.refuse(Code.BAD_VALUE, list.place(), Shown.quoted(fact.name()) + " is no list",
                    "define it with `list of: 2 to 60 kg by 0.5`");
        }
        if (fact.values().base(0).signum() <= 0) {
            return troubles.refuse(Code.BAD_VALUE, list.place(), Shown.quoted(fact.name())
                    + " may hold an item of " + fact.values().show(0), "let its range begin above 0");
        }
        return Optional.of(fact);
    }

    private Optional<Boolean> yesOrNo(Text text) {
        return switch (Tidy.of(text)) {
            case "yes" -> Optional.of(true);
            case "no" -> Optional.of(false);
            default -> troubles.refuse(Code.BAD_VALUE, text.place(),
                    Shown.quoted(text.value()) + " is neither yes nor no", "write `yes` or `no`");
        };
    }

    private Optional<Optional<String>> then(LadderSpec spec) {
        Optional<Text> text = spec.then();
        if (text.map(Tidy::of).flatMap(Amount::read).isPresent()) {
            return troubles.refuse(Code.BAD_VALUE, text.get().place(), Shown.quoted(text.get().value())
                    + " looks like the amount of a rung",
                    "name the rung without help in words, such as `no band`");
        }
        return Optional.of(text.map(Tidy::of));
    }
}
