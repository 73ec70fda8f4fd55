package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import rungwright.finding.Shown;
import rungwright.json.CheckedSpec;

/** What {@code check} says of a spec: its findings, and a last line with the verdict. */
public final class CheckText {
    private CheckText() {
    }

    /** The findings with the spec's own lines, then the verdict. */
    public static List<String> lines(CheckedSpec spec, String source, Colours colours) {
        List<String> lines = new ArrayList<>(
                new FindingText(spec.file(), source, colours).lines(spec.findings()));
        lines.add(Shown.whole(spec.file()) + ": " + colours.strong(verdict(spec)));
        return lines;
    }

    /**
     * {@code proven: 4 stages, 11 rules, every state has one next step}, or
     * {@code not proven: 3 errors, 1 warning}.
     */
    static String verdict(CheckedSpec spec) {
        String tally = FindingText.tally(spec.findings());
        if (!spec.isProven()) {
            return "not proven: " + tally;
        }
        return "proven: " + Count.of(spec.stages(), "stage") + ", " + Count.of(spec.rules(), "rule")
                + ", every state has one next step" + (tally.isEmpty() ? "" : " (" + tally + ")");
    }
}
