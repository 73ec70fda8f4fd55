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
record InsteadText(Wording wording) {
    static final InsteadText ENGLISH = new InsteadText(Wording.ENGLISH);

    String of(Instead instead, Decision decision) {
        Words words = wording.language().words("decision");
        String gone = decision.before().map(State::at).map(this::name)
                .orElseGet(() -> words.say("instead.theRung"));
        String now = decision.after().map(State::at).map(this::name)
                .orElseGet(() -> wording.rules().say("target.goal"));
        return words.say(switch (instead) {
            case SAME_AMOUNT -> "instead.sameAmount";
            case EASIER_RUNG -> "instead.easierRung";
            case BOTTOM_RUNG -> "instead.bottomRung";
            case START -> "instead.start";
        }, gone, now);
    }

    private String name(Standing at) {
        return at.rungName().isEmpty() ? Shown.text(at.stageName()) : wording.rung(at.rungName());
    }
}
