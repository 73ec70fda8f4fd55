package rungwright.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SuggestTest {
    private static final List<String> KEYS = List.of("advance", "fall back", "hold", "do", "ladder");

    @Test
    void eachKindOfSlipIsForgiven() {
        assertEquals(Optional.of("advance"), Suggest.closest("advnce", KEYS));
        assertEquals(Optional.of("advance"), Suggest.closest("advancce", KEYS));
        assertEquals(Optional.of("advance"), Suggest.closest("advanse", KEYS));
        assertEquals(Optional.of("advance"), Suggest.closest("avdance", KEYS));
        assertEquals(Optional.of("fall back"), Suggest.closest("fallback", KEYS));
        assertEquals(Optional.of("fall back"), Suggest.closest("fall_back", KEYS));
    }

    @Test
    void capitalsAreNoSlip() {
        assertEquals(Optional.of("hold"), Suggest.closest("HOLD", KEYS));
    }

    @Test
    void moreThanAThirdOfTheWordIsAnotherWord() {
        assertEquals(Optional.of("abcdef"), Suggest.closest("abcdxy", List.of("abcdef")));
        assertEquals(Optional.empty(), Suggest.closest("abcxyz", List.of("abcdef")));
        assertEquals(Optional.empty(), Suggest.closest("weight", KEYS));
        assertEquals(Optional.empty(), Suggest.closest("x", List.of("y")));
    }

    @Test
    void theClosestWinsAndThenTheFirst() {
        assertEquals(Optional.of("plank"), Suggest.closest("plank", List.of("flank", "plank")));
        assertEquals(Optional.of("flank"), Suggest.closest("slank", List.of("flank", "plank")));
        assertEquals(Optional.of("bent dip"), Suggest.closest("bend dip", List.of("band dips", "bent dip")));
    }

    @Test
    void itAgreesWithTryingEverySlipOnSmallWords() {
        for (String from : words()) {
            for (String to : words()) {
                boolean near = from.equals(to) || oneSlip(from).contains(to);
                boolean found = Suggest.closest(from + "zz", List.of(to + "zz")).isPresent();
                assertEquals(near, found, from + " " + to);
            }
        }
    }

    @Test
    void longWordsAreNotLookedAt() {
        String longest = "x".repeat(120);
        assertEquals(Optional.of(longest), Suggest.closest("x".repeat(119), List.of(longest)));
        String huge = "x".repeat(3_000_000);
        assertEquals(Optional.empty(), Suggest.closest(huge, List.of(huge.substring(1), "reps")));
    }

    /**
     * Words of one to three letters from {@code a} and {@code b}: with two letters more, one slip is allowed.
     */
    private static List<String> words() {
        List<String> words = new ArrayList<>();
        for (String first : List.of("a", "b")) {
            words.add(first);
            for (String second : List.of("a", "b")) {
                words.add(first + second);
                words.add(first + second + "a");
                words.add(first + second + "b");
            }
        }
        return words;
    }

    private static List<String> oneSlip(String word) {
        List<String> near = new ArrayList<>();
        for (int i = 0; i <= word.length(); i++) {
            for (String letter : List.of("a", "b")) {
                near.add(word.substring(0, i) + letter + word.substring(i));
                near.add(word.substring(0, i) + letter + word.substring(Math.min(word.length(), i + 1)));
            }
            String after = word.substring(Math.min(word.length(), i + 1));
            near.add(word.substring(0, i) + after);
            if (i > 0 && i < word.length()) {
                near.add(word.substring(0, i - 1) + word.charAt(i) + word.charAt(i - 1) + after);
            }
        }
        return near;
    }
}
