package rungwright.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A spec for a small world, in plain data: every feature of the language, with grids of a few values.
 *
 * @param place nothing where the section is left out
 * @param breaks nothing where the section is left out
 */
record Toy(String program, List<Fact> facts, List<Measure> measures, List<Worked> worked,
        List<Ladder> ladders,
        List<Rule> stops, List<Rule> breaks, List<Rule> every, Optional<Placing> place, List<Stage> stages) {

    /** A fact about a person: one value, or a list of {@code fewest} to {@code most}. */
    record Fact(String name, Grid grid, boolean list, int fewest, int most) {
    }

    /** Which set counts. */
    enum Take {
        HIGHEST, LOWEST, FIRST, LAST, TOTAL
    }

    /** A logged measure. */
    record Measure(String name, Grid grid, boolean eachSet, Optional<Take> take, Optional<Frac> ifNotLogged) {
    }

    /** A worked-out measure, with the unit it is counted in. */
    record Worked(String name, Form form, String unit, Optional<Take> take, Optional<Frac> ifNone) {
    }

    /** The place section. */
    record Placing(List<Measure> assessments, List<Rule> rules) {
    }

    /** A stage; {@code ladder} is empty where it has none. */
    record Stage(String name, String ladder, List<Rule> rules) {
    }

    Optional<Fact> fact(String name) {
        return facts.stream().filter(f -> f.name().equals(name)).findFirst();
    }

    Optional<Measure> measure(String name) {
        return measures.stream().filter(m -> m.name().equals(name)).findFirst();
    }

    Optional<Worked> worked(String name) {
        return worked.stream().filter(w -> w.name().equals(name)).findFirst();
    }

    Optional<Measure> assessment(String name) {
        return assessments().stream().filter(a -> a.name().equals(name)).findFirst();
    }

    List<Measure> assessments() {
        return place.map(Placing::assessments).orElse(List.of());
    }

    Optional<Ladder> ladder(Stage stage) {
        return ladders.stream().filter(l -> l.name().equals(stage.ladder())).findFirst();
    }

    int stageNumber(String name) {
        for (int i = 0; i < stages.size(); i++) {
            if (stages.get(i).name().equals(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException("no stage " + name);
    }

    /** Whether a name is read set by set. */
    boolean setByset(String name) {
        return measure(name).map(Measure::eachSet).orElseGet(() -> worked(name)
                .map(w -> w.form().names().stream().anyMatch(this::setByset)).orElse(false));
    }

    /** The take of a measure: its own, or that of the only set measure that a worked-out one reads. */
    Optional<Take> take(String name) {
        Optional<Worked> formula = worked(name);
        if (formula.isEmpty()) {
            return measure(name).flatMap(Measure::take);
        }
        List<String> over = formula.get().form().names().stream().filter(this::setByset).distinct().toList();
        return formula.get().take().or(() -> over.size() == 1 ? take(over.get(0)) : Optional.empty());
    }

    /** The unit that a plain number for the name is in. */
    String unit(String name) {
        return worked(name).map(Worked::unit).or(() -> measure(name).map(m -> m.grid().unit()))
                .or(() -> assessment(name).map(m -> m.grid().unit()))
                .or(() -> fact(name).map(f -> f.list() ? "" : f.grid().unit())).orElse("");
    }

    /** The rules that may decide a session in a stage, section by section. */
    List<Rule> inForce(Stage stage) {
        List<Rule> all = new ArrayList<>(stops);
        all.addAll(every);
        all.addAll(stage.rules());
        return all;
    }

    /** A rule as stage or section, kind, and its position among those of its kind: {@code wall/advance/1}. */
    static String id(String where, List<Rule> rules, int index) {
        String kind = rules.get(index).kind();
        long position = rules.subList(0, index + 1).stream().filter(r -> r.kind().equals(kind)).count();
        return where + "/" + kind + "/" + position;
    }
}
