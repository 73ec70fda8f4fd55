package rungwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every Java file of ours reads like the others. */
class StyleTest {
    private static final Path ROOT = Path.of("").toAbsolutePath().getParent();
    private static List<Source> shipped;
    private static List<Source> tests;

    @BeforeAll
    static void readEverySource() {
        shipped = Source.under(ROOT, "engine/src/main/java");
        tests = Source.under(ROOT, "engine/src/test/java");
        assertFalse(shipped.isEmpty() || tests.isEmpty());
    }

    @Test
    void filesAreShortAndLinesAreNarrowAndNothingIsLeftUnfinished() {
        assertNone(shipped, TextRules::faults);
        assertNone(tests, TextRules::faults);
    }

    @Test
    void methodsAreShortAndNamesSaySomethingAndNothingCatchesEverything() {
        assertNone(shipped, CodeRules::faults);
        assertNone(tests, CodeRules::faults);
    }

    @Test
    void whateverAReaderCanCallSaysWhatItIs() {
        assertNone(shipped, JavadocRules::faults);
    }

    @Test
    void everyPackageHasItsSentence() {
        Set<String> silent = new TreeSet<>();
        shipped.stream().filter(s -> !s.isModuleInfo()).forEach(s -> silent.add(s.chapter()));
        shipped.stream().filter(Source::isPackageInfo).forEach(s -> silent.remove(s.chapter()));
        assertEquals(Set.of(), silent);
    }

    private static void assertNone(List<Source> sources, Function<Source, List<String>> rule) {
        List<String> faults = new ArrayList<>();
        sources.forEach(source -> faults.addAll(rule.apply(source)));
        if (!faults.isEmpty()) {
            fail("\n" + String.join("\n", faults));
        }
    }
}
