package rungwright.text;

import java.util.List;

/**
 * What somebody answered to a {@link Question}.
 *
 * @param values as the program writes them, one or more; an empty one is no reading
 * @param mistakes what is wrong with it, a sentence each; none where it can be used
 */
public record Answer(List<String> values, List<String> mistakes) {
    /** Copies the lists. */
    public Answer {
        values = List.copyOf(values);
        mistakes = List.copyOf(mistakes);
    }

    /** Whether it can be used. */
    public boolean isFine() {
        return mistakes.isEmpty();
    }
}
