package rungwright.page;

import java.util.List;

/**
 * A stage as it is drawn.
 *
 * @param rungs names of its rungs, easiest first, at most seven; none where it has no ladder
 * @param doing what is done, in phrases
 * @param rules its moves, each in one sentence
 */
record StageBox(int number, String name, List<String> rungs, List<String> doing, List<String> rules) {
    StageBox {
        rungs = List.copyOf(rungs);
        doing = List.copyOf(doing);
        rules = List.copyOf(rules);
    }
}
