package rungwright.oracle;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;

/** Values, criteria and targets in the words of the spec language. */
final class Phrases {
    private static final Map<Crit.Which, String> WHICH = Map.of(Crit.Which.TAKE, "", Crit.Which.EVERY,
            " in every set", Crit.Which.ANY, " in any set", Crit.Which.FIRST, " in the first set",
            Crit.Which.LAST,
            " in the last set", Crit.Which.TOTAL, " in total");
    private final Toy toy;
    private final Random random;

    Phrases(Toy toy, Random random) {
        this.toy = toy;
        this.random = random;
    }

    Object values(Grid grid) {
        if (grid.equals(Grid.YES_OR_NO)) {
            return "yes or no";
        }
        if (!grid.numeric()) {
            return List.copyOf(grid.words());
        }
        String unit = grid.unit().isEmpty() ? "" : " " + grid.unit();
        boolean by = !grid.step().equals(Frac.ONE) || random.nextInt(4) == 0;
        String step = by ? " by " + grid.step().text() + (random.nextBoolean() ? unit : "") : "";
        return grid.least().text() + (random.nextInt(3) == 0 ? unit : "") + " to " + grid.greatest().text()
                + unit
                + step;
    }

    String take(Toy.Take take) {
        return take.name().toLowerCase(Locale.ROOT);
    }

    String value(Grid grid, Frac value) {
        return grid.numeric() ? number(value, grid.unit()) : grid.show(value);
    }

    /** A number, at times without its unit, at times as minutes and seconds, or grams. */
    String number(Frac value, String unit) {
        int how = random.nextInt(4);
        if (unit.equals("s") && how == 0 && value.sign() >= 0 && value.compareTo(Frac.of(60)) >= 0) {
            long seconds = value.top().longValueExact();
            return seconds / 60 + ":" + (seconds % 60 < 10 ? "0" : "") + seconds % 60;
        }
        if (unit.equals("kg") && how == 0) {
            return value.times(Frac.of(1000)).text() + " g";
        }
        return how == 1 ? value.text() : (value.text() + " " + unit).strip();
    }

    Object criterion(Crit crit) {
        if (crit.op() == Crit.Op.ANY_OF) {
            return crit.bounds().stream().<Object>map(bound -> bound(crit, bound) + WHICH.get(crit.which()))
                    .toList();
        }
        String first = bound(crit, crit.bounds().get(0));
        return comparison(crit, first) + WHICH.get(crit.which());
    }

    private String comparison(Crit crit, String first) {
        switch (crit.op()) {
            case RANGE:
                return first + " to " + bound(crit, crit.bounds().get(1));
            case IS:
                return first;
            default:
                return crit.op().name().toLowerCase(Locale.ROOT).replace('_', ' ') + " " + first;
        }
    }

    private String bound(Crit crit, Crit.Bound bound) {
        if (bound.share()) {
            return bound.number().text() + " % of " + bound.fact();
        }
        Grid grid = toy.measure(crit.name()).map(Toy.Measure::grid)
                .or(() -> toy.assessment(crit.name()).map(Toy.Measure::grid))
                .or(() -> toy.fact(crit.name()).filter(f -> !f.list()).map(Toy.Fact::grid))
                .orElse(Grid.numbers("0", "1", "1", toy.unit(crit.name())));
        return value(grid, bound.number());
    }

    Object rungs(Ladder ladder) {
        String unit = ladder.unit().isEmpty() ? "" : " " + ladder.unit();
        List<Frac> amounts = ladder.amounts();
        switch (ladder.type()) {
            case NAMES:
                return ladder.names();
            case AMOUNTS:
                return amounts.stream().map(amount -> amount.text() + unit).collect(Collectors.toList());
            case RUN:
                return amounts.get(0).text() + " to " + amounts.get(1).text() + unit + " by "
                        + amounts.get(2).text()
                        + (random.nextBoolean() ? unit : "");
            default:
                Crit.Bound share = ladder.share().orElseThrow();
                return amounts.get(0).text() + unit + " to " + share.number().text() + " % of " + share.fact()
                        + " by " + amounts.get(2).text() + unit;
        }
    }

    String target(Go go) {
        switch (go.way()) {
            case UP:
            case DOWN:
                return go.count() + (go.count() == 1 ? " rung " : " rungs ")
                        + go.way().name().toLowerCase(Locale.ROOT);
            case SAME:
                return "same place";
            case START:
            case GOAL:
                return go.way().name().toLowerCase(Locale.ROOT);
            default:
                return "stage " + go.stage() + rung(go);
        }
    }

    private String rung(Go go) {
        switch (go.way()) {
            case RUNG:
                return " on rung " + go.rung();
            case TOP:
                return " on the top rung";
            case SINGLE:
                return " on the first single rung";
            case LEFT:
                return " where they left it";
            case UP_TO:
                return " on the highest rung up to " + go.upTo().map(bound -> upTo(go, bound))
                        .orElse(go.rung());
            default:
                return "";
        }
    }

    private String upTo(Go go, Crit.Bound bound) {
        String unit = toy.ladder(toy.stages().get(toy.stageNumber(go.stage()))).orElseThrow().unit();
        return bound.share() ? bound.number().text() + " % of " + bound.fact()
                : (bound.number().text() + " " + unit).strip();
    }
}
