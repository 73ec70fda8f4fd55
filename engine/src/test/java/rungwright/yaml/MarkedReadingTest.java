package rungwright.yaml;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import rungwright.MarkedSpecs;

/** What reading alone finds in marked specs. */
class MarkedReadingTest {
    @TestFactory
    Stream<DynamicTest> everyMarkIsMetAndNothingElseIsFound() {
        return MarkedSpecs.tests("reading", text -> SpecReader.read(text).findings());
    }
}
