package rungwright.program;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import rungwright.MarkedSpecs;

/**
 * What the proof, the journeys and the trade's questions find in marked specs, and where they find nothing.
 */
class MarkedPromiseTest {
    @TestFactory
    Stream<DynamicTest> everyMarkIsMetAndNothingElseIsFound() {
        return MarkedSpecs.tests("promise", text -> Checked.read(text).findings());
    }
}
