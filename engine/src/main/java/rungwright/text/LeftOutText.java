package rungwright.text;

import rungwright.finding.Shown;
import rungwright.journal.Contents;
import rungwright.journal.LeftOut;
import rungwright.program.Outline;
import rungwright.step.Refusal;

/**
 * Why a report leaves somebody or something out. What a reader said of a line that it could not read is
 * quoted as it is.
 */
record LeftOutText(Outline outline, Wording wording, Words words) implements LeftOut.Cases<String> {
    @Override
    public String unopened() {
        return words.say("left.unopened");
    }

    @Override
    public String notEnrolled() {
        return words.say("left.notEnrolled");
    }

    @Override
    public String damaged(Contents.Damage damage) {
        return words.say("left.damaged", Integer.toString(damage.line()), Shown.whole(damage.reason()));
    }

    @Override
    public String otherProgram(String program) {
        return words.say("left.otherProgram", Shown.quoted(program));
    }

    @Override
    public String refused(Refusal refusal) {
        return Shown.whole(new RefusalText(outline, wording).of(refusal));
    }

    @Override
    public String unreadable(long line, String reason) {
        return words.say("left.unreadable", Long.toString(line), Shown.whole(reason));
    }
}
