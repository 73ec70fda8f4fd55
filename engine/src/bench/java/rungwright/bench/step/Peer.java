package rungwright.bench.step;

import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** Another way to find the rule that speaks. */
interface Peer {
    /** The number of the rule for a session in a stage. */
    int rule(int stage, long[] session);

    /** The peer of that name, with all six stages ready. */
    static Peer named(String name) {
        return switch (name) {
            case "hand-written" -> HandWritten::rule;
            case "predicates" -> predicates();
            case "SpEL" -> new Spel();
            case "JEXL" -> new Jexl();
            case "CEL" -> new Cel();
            case "Easy Rules" -> new Easy();
            case "KIE DMN" -> new Dmn();
            default -> throw new IllegalArgumentException("no peer " + name);
        };
    }

    /** What is made of the rules of each stage. */
    static <T> List<T> stages(Function<List<Conditions.Rule>, T> made) {
        return IntStream.range(0, Course.STAGES).mapToObj(Conditions::of).map(made).toList();
    }

    /** A list of predicates, asked one after the other. */
    private static Peer predicates() {
        record Case(int number, Predicate<long[]> when) {
        }
        List<List<Case>> stages = stages(rules -> rules.stream()
                .map(rule -> new Case(rule.number(), predicate(rule))).toList());
        return (stage, session) -> {
            for (Case each : stages.get(stage)) {
                if (each.when().test(session)) {
                    return each.number();
                }
            }
            throw new IllegalStateException("no rule");
        };
    }

    private static Predicate<long[]> predicate(Conditions.Rule rule) {
        return rule.anyOf().stream()
                .map(all -> all.stream().<Predicate<long[]>>map(demand -> demand::met).reduce(Predicate::and)
                        .orElseThrow())
                .reduce(Predicate::or).orElseThrow();
    }
}
