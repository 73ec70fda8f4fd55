package rungwright.cli;

import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import rungwright.journal.Cohort;
import rungwright.text.Language;
import rungwright.text.ReportWords;

/**
 * Groups side by side. What each is called depends on the language: what is for programs stays in English.
 *
 * @param titles as many as there are groups, in one language
 */
record Beside(List<Cohort> cohorts, Function<ReportWords, List<String>> titles) {
    /** One group, which needs no name. */
    static Beside alone(Cohort cohort) {
        return new Beside(List.of(cohort), words -> List.of(""));
    }

    /** With their names in a language. */
    List<Cohort> in(Language language) {
        List<String> named = titles.apply(ReportWords.in(language));
        return IntStream.range(0, cohorts.size()).mapToObj(each -> cohorts.get(each).titled(named.get(each)))
                .toList();
    }
}
