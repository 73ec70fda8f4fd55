package rungwright.text;

import rungwright.finding.Shown;
import rungwright.program.Instead;
import rungwright.program.Standing;
import rungwright.step.Decision;
import rungwright.step.State;

/**
 * Why a trainee stands elsewhere after changed facts or a new version: {@code 25 kg is not there any more; 40
 * kg is the nearest easier rung.}
 */
final class InsteadText {
    private InsteadText() {
    }

    static String of(Instead instead, Decision decision) {
        String gone = decision.before().map(State::at).map(InsteadText::name).orElse("The rung");
        String now = decision.after().map(State::at).map(InsteadText::name).orElse("the goal");
        return switch (instead) {
            case SAME_AMOUNT -> gone + " is called " + now + " now; it is as much as before.";
            case EASIER_RUNG -> gone + " is not there any more; " + now + " is the nearest easier rung.";
            case BOTTOM_RUNG -> gone + " is not there any more, and no rung is known to be easier; " + now
                    + " is the bottom rung.";
            case START -> gone + " is not there any more, nor any rung of its stage; they start again.";
        };
    }

    private static String name(Standing at) {
        return Shown.text(at.rungName().isEmpty() ? at.stageName() : at.rungName());
    }
}
