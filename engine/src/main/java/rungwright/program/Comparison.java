package rungwright.program;

import java.util.List;
import java.util.stream.IntStream;

/** How a phrase compares a reading with the values it names. */
enum Comparison {
    /** {@code at least 12}. */
    AT_LEAST("at least "),
    /** {@code at most 3}. */
    AT_MOST("at most "),
    /** {@code over 5}. */
    OVER("over "),
    /** {@code under 5}. */
    UNDER("under "),
    /** {@code not 12}. */
    NOT("not "),
    /** {@code 5 to 12}. */
    BETWEEN(""),
    /** {@code 12}, {@code yes}, or any of a list. */
    ANY_OF("");

    /** Those that are a word before one value. */
    static final List<Comparison> WORDED = List.of(AT_LEAST, AT_MOST, OVER, UNDER, NOT);

    private final String words;

    Comparison(String words) {
        this.words = words;
    }

    /** The words before the value, with the space after them. */
    String words() {
        return words;
    }

    /**
     * One end of what is allowed.
     *
     * @param value which of the phrase's values stands there
     * @param lower whether readings lie above it
     * @param included whether the value itself is allowed
     */
    record End(int value, boolean lower, boolean included) {
    }

    /** Alternatives, each of ends that must all be kept. */
    List<List<End>> ends(int values) {
        return switch (this) {
            case AT_LEAST -> List.of(List.of(new End(0, true, true)));
            case AT_MOST -> List.of(List.of(new End(0, false, true)));
            case OVER -> List.of(List.of(new End(0, true, false)));
            case UNDER -> List.of(List.of(new End(0, false, false)));
            case NOT -> List.of(List.of(new End(0, false, false)), List.of(new End(0, true, false)));
            case BETWEEN -> List.of(List.of(new End(0, true, true), new End(1, false, true)));
            case ANY_OF -> IntStream.range(0, values)
                    .mapToObj(value -> List.of(new End(value, true, true), new End(value, false, true)))
                    .toList();
        };
    }
}
