package rungwright.step;

import rungwright.finding.Finding;
import rungwright.program.Checked;
import rungwright.program.Program;

/** Small programs for tests, from the text of a spec. */
final class Specs {
    private Specs() {
    }

    /** The program of a spec; the test fails with the findings where there is none. */
    static Program program(String... lines) {
        Checked checked = Checked.read(String.join("\n", lines) + "\n");
        return checked.program().orElseThrow(() -> new AssertionError(
                checked.findings().stream().filter(Finding::isError).toList()));
    }
}
