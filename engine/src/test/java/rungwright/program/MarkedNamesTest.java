package rungwright.program;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import rungwright.MarkedSpecs;
import rungwright.finding.Finding;
import rungwright.yaml.Reading;
import rungwright.yaml.SpecReader;

/** What reading and resolving find in marked specs, before anything is proven. */
class MarkedNamesTest {
    @TestFactory
    Stream<DynamicTest> everyMarkIsMetAndNothingElseIsFound() {
        return MarkedSpecs.tests("names", MarkedNamesTest::findings);
    }

    private static List<Finding> findings(String text) {
        Reading reading = SpecReader.read(text);
        Stream<Finding> resolved = reading.spec().stream().flatMap(spec -> Resolver.resolve(spec).findings()
                .stream());
        return Stream.concat(reading.findings().stream(), resolved).toList();
    }
}
