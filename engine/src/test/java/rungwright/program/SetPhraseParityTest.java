package rungwright.program;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Take;
import rungwright.region.Axis;

/** Every phrase over every short list of sets of a tiny measure, against what the words say. */
class SetPhraseParityTest {
    private static final int MOST = 3;
    private static final String SECTIONS = """
            measures:
              reps: { values: 0 to 3, each: set, take: highest }
            """;

    @Test
    void demandsHoldExactlyWhereTheWordsDo() {
        int phrases = 0;
        for (Map.Entry<String, IntPredicate> phrase : comparisons().entrySet()) {
            for (String sets : List.of("", " in every set", " in any set", " in the first set",
                    " in the last set")) {
                if (isWord(phrase.getKey(), sets)) {
                    compare(phrase.getKey() + sets, sets, phrase.getValue());
                    phrases++;
                }
            }
        }
        assertEquals(126, phrases);
    }

    private static boolean isWord(String phrase, String sets) {
        boolean plain = Character.isDigit(phrase.charAt(0));
        return !(sets.equals(" in any set") && plain) && !(sets.equals(" in every set")
                && phrase.startsWith("not"));
    }

    private static Map<String, IntPredicate> comparisons() {
        Map<String, IntPredicate> all = new LinkedHashMap<>();
        for (int a = 0; a <= MOST; a++) {
            int value = a;
            all.put("at least " + a, x -> x >= value);
            all.put("at most " + a, x -> x <= value);
            all.put("" + a, x -> x == value);
            all.put("not " + a, x -> x != value);
            if (a < MOST) {
                all.put("over " + a, x -> x > value);
            }
            if (a > 0) {
                all.put("under " + a, x -> x < value);
            }
            for (int b = a + 1; b <= MOST; b++) {
                int most = b;
                all.put(a + " to " + b, x -> x >= value && x <= most);
            }
        }
        return all;
    }

    private static void compare(String phrase, String sets, IntPredicate test) {
        Criterion criterion = Specs.criterion(SECTIONS, "reps: " + phrase);
        for (List<Integer> list : lists()) {
            assertEquals(meant(sets, list, test), holds(criterion, list), () -> phrase + " over " + list);
        }
    }

    private static boolean meant(String sets, List<Integer> list, IntPredicate test) {
        return switch (sets) {
            case " in every set" -> list.stream().allMatch(test::test);
            case " in any set" -> list.stream().anyMatch(test::test);
            case " in the first set" -> test.test(list.get(0));
            case " in the last set" -> test.test(list.get(list.size() - 1));
            default -> test.test(list.stream().mapToInt(x -> x).max().orElseThrow());
        };
    }

    private static boolean holds(Criterion criterion, List<Integer> list) {
        return criterion.anyOf().stream().anyMatch(all -> all.stream()
                .allMatch(demand -> demand.interval().contains(position(demand.axis(), list))));
    }

    private static long position(Axis axis, List<Integer> list) {
        Take take = ((Quantity.Taken) axis.quantity()).take();
        return switch (take) {
            case HIGHEST -> list.stream().mapToInt(x -> x).max().orElseThrow();
            case LOWEST -> list.stream().mapToInt(x -> x).min().orElseThrow();
            case FIRST -> list.get(0);
            case LAST -> list.get(list.size() - 1);
            case TOTAL -> ((Axis.Classes) axis).cuts()
                    .classOf(Ratio.of(list.stream().mapToInt(x -> x).sum()));
        };
    }

    private static List<List<Integer>> lists() {
        List<List<Integer>> lists = new ArrayList<>();
        for (int a = 0; a <= MOST; a++) {
            lists.add(List.of(a));
            for (int b = 0; b <= MOST; b++) {
                lists.add(List.of(a, b));
                for (int c = 0; c <= MOST; c++) {
                    lists.add(List.of(a, b, c));
                }
            }
        }
        return lists;
    }

    @Test
    void totalsHoldExactlyWhereTheSumDoes() {
        for (int bound = 1; bound < 9; bound++) {
            int value = bound;
            Criterion criterion = Specs.criterion(SECTIONS, "reps: at least " + bound + " in total");
            for (List<Integer> list : lists()) {
                assertEquals(list.stream().mapToInt(x -> x).sum() >= value, holds(criterion, list));
            }
        }
    }
}
