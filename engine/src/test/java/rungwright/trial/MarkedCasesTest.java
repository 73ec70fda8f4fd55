package rungwright.trial;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import rungwright.MarkedSpecs;
import rungwright.program.Program;

/** Every mistake in a cases file is found where it stands, and nothing else is. */
class MarkedCasesTest {
    @TestFactory
    Stream<DynamicTest> everyMarkIsMet() {
        Program program = Bench.program(Bench.SPEC);
        return MarkedSpecs.asTheyStand("cases", text -> Cases.read(program, text).findings());
    }
}
