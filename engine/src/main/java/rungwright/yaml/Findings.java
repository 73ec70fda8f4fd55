package rungwright.yaml;

import java.util.ArrayList;
import java.util.List;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;

/**
 * What has been found wrong so far, and how much of the spec was lost by it.
 *
 * <p>A part that carries a {@code whole} of its own takes a {@link #mark} before it is read and
 * {@linkplain #settle settles} it afterwards: a rule lost in one stage then says nothing about the next stage
 * or the spec.
 */
final class Findings {
    /** More findings than this are counted as one last finding: a wrecked file of 1 MB could have 300,000. */
    static final int MOST = 1_000;

    private final List<Finding> found = new ArrayList<>();
    private Place firstLeftOut = Place.START;
    private int leftOut;
    private int losses;

    /** Takes a finding that kept a part of the spec from being read. */
    void add(Finding finding) {
        losses++;
        aside(finding);
    }

    /** Takes a finding that left nothing out of the spec. */
    void aside(Finding finding) {
        if (found.size() < MOST) {
            found.add(finding);
        } else if (leftOut++ == 0) {
            firstLeftOut = finding.place();
        }
    }

    /** Takes all that others found, and what was lost by it. */
    void addAll(Findings others) {
        losses += others.losses;
        others.found.forEach(this::aside);
        if (others.leftOut > 0 && leftOut == 0) {
            firstLeftOut = others.firstLeftOut;
        }
        leftOut += others.leftOut;
    }

    /** Counts a part that is not there for a reason already reported. */
    void lost() {
        losses++;
    }

    /** The point in the reading that {@link #settle} goes back to. */
    int mark() {
        return losses;
    }

    /** Whether nothing was lost since the mark; whoever asks says so, and the parts around it need not. */
    boolean settle(int mark) {
        boolean whole = losses == mark;
        losses = mark;
        return whole;
    }

    /** All of them by line, column and code. */
    List<Finding> sorted() {
        List<Finding> all = new ArrayList<>(found);
        if (leftOut > 0) {
            all.add(Finding.of(Code.TOO_LARGE, firstLeftOut, "more than " + MOST
                    + " things are wrong here, and " + leftOut + " of them are not listed"));
        }
        return all.stream().distinct().sorted().toList();
    }
}
