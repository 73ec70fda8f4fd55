package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import rungwright.finding.Shown;
import rungwright.trial.FaultReport;

/** What became of planted faults, in words: how many of each fate, and those that no case notices. */
public final class FaultsText {
    private static final int WIDEST = 100;

    private FaultsText() {
    }

    /** The lines. */
    public static List<String> lines(FaultReport faults) {
        List<String> lines = new ArrayList<>();
        int refused = faults.of(FaultReport.Fate.REFUSED).size();
        int noticed = faults.of(FaultReport.Fate.NOTICED).size();
        int same = faults.of(FaultReport.Fate.SAME).size();
        List<FaultReport.Result> unnoticed = faults.of(FaultReport.Fate.UNNOTICED);
        List<FaultReport.Result> unreached = faults.of(FaultReport.Fate.UNREACHED);
        lines.addAll(Wrap.after("faults: ", faults.results().size() + " planted: " + refused
                + " refused by the proof, " + noticed + " noticed by a case, " + unnoticed.size()
                + " not noticed; " + same + " proven to change nothing, and not counted"
                + (unreached.isEmpty() ? "" : "; " + unreached.size() + " that no case was found for"),
                WIDEST));
        unnoticed.forEach(result -> {
            lines.addAll(told("not noticed: ", result));
            result.example().ifPresent(spec -> lines.addAll(Wrap.after("      try: ",
                    CoverageText.example(spec), WIDEST)));
        });
        unreached.forEach(result -> lines.addAll(told("no case was found for: ", result)));
        return lines;
    }

    /** That faults are planted only where the cases pass without one. */
    public static String casesFirst() {
        return "note: faults are planted once every case passes";
    }

    private static List<String> told(String what, FaultReport.Result result) {
        return Wrap.after("  - ", what + Shown.whole(result.words()) + " (line " + result.place().line()
                + ")",
                WIDEST);
    }
}
