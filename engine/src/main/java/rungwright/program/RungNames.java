package rungwright.program;

import java.util.List;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.measure.Amount;
import rungwright.measure.Ratio;
import rungwright.measure.Scale;
import rungwright.measure.Unit;
import rungwright.measure.Values;
import rungwright.measure.Words;

/** Finds the rung that {@code on rung} names, if the ladder can have one of that name for anybody. */
record RungNames(String stage, String name, Place place, Troubles troubles)
        implements Ladder.Cases<Optional<RungChoice>> {
    @Override
    public Optional<RungChoice> named(Ladder.Named ladder) {
        if (ladder.equals(Ladder.SINGLE)) {
            return troubles.refuse(Code.UNKNOWN_NAME, place, "stage " + Shown.quoted(stage)
                    + " has no ladder, so no rung " + Shown.quoted(name), "write `stage " + Shown.text(stage)
                    + "`");
        }
        return ladder.names().contains(name) ? choice(name) : unknown(ladder.names());
    }

    @Override
    public Optional<RungChoice> amounts(Ladder.Amounts ladder) {
        List<String> names = ladder.amounts().stream().map(ladder.unit()::show).toList();
        return amount(ladder.unit()).filter(ladder.amounts()::contains).map(ladder.unit()::show)
                .map(this::choice).orElseGet(() -> unknown(names));
    }

    @Override
    public Optional<RungChoice> run(Ladder.Run ladder) {
        Optional<Ratio> amount = amount(ladder.unit());
        if (amount.isEmpty()) {
            return unknown(List.of());
        }
        Ratio steps = amount.get().minus(ladder.start()).over(ladder.step());
        if (steps.signum() < 0 || !steps.isWhole()) {
            return troubles.refuse(Code.OFF_GRID, place, Shown.quoted(name) + " is no rung of stage "
                    + Shown.quoted(stage) + ", which begins at " + ladder.unit().show(ladder.start())
                    + " and goes up by " + ladder.unit().show(ladder.step()), "name a rung that the run has");
        }
        return choice(ladder.unit().show(amount.get()));
    }

    @Override
    public Optional<RungChoice> eachOf(Ladder.EachOf ladder) {
        if (ladder.then().filter(name::equals).isPresent()) {
            return choice(name);
        }
        return ladder.list().values().match(new Values.Cases<>() {
            @Override
            public Optional<RungChoice> scale(Scale scale) {
                return ownItem(ladder, scale);
            }

            @Override
            public Optional<RungChoice> words(Words words) {
                return unknown(words.names());
            }
        });
    }

    private Optional<RungChoice> ownItem(Ladder.EachOf ladder, Scale scale) {
        Optional<Ratio> amount = amount(scale.unit());
        if (amount.isEmpty()) {
            return unknown(ladder.then().stream().toList());
        }
        int most = ladder.together() ? ladder.list().list().map(items -> items.most()).orElse(1) : 1;
        return OwnSums.canBe(amount.get(), scale, most) ? choice(scale.unit().show(amount.get()))
                : troubles.refuse(Code.OFF_GRID, place, Shown.quoted(name) + " cannot be a rung of stage "
                        + Shown.quoted(stage), "name an amount that " + Shown.quoted(ladder.list().name())
                        + " can have" + (most > 1 ? ", or a sum of them" : ""));
    }

    private Optional<Ratio> amount(Unit unit) {
        return Amount.read(name).flatMap(amount -> amount.in(unit));
    }

    private Optional<RungChoice> choice(String rung) {
        return Optional.of(new RungChoice.Named(rung));
    }

    private Optional<RungChoice> unknown(List<String> names) {
        String known = names.isEmpty() ? "name one by its amount"
                : "its rungs are " + String.join(", ", names.stream().limit(20).map(Shown::quoted).toList());
        return troubles.refuse(Code.UNKNOWN_NAME, place, "stage " + Shown.quoted(stage) + " has no rung "
                + Shown.quoted(name), Suggest.closest(name, names)
                        .map(rung -> "did you mean " + Shown.quoted(rung) + "?").orElse(known));
    }
}
