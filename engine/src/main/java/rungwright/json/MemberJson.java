package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import rungwright.journal.Cohort;
import rungwright.journal.Member;
import rungwright.step.Status;

/** One trainee of a report. */
record MemberJson(JsonGenerator json) {
    void write(Cohort cohort, Member member) throws IOException {
        json.writeStringField("trainee", member.name());
        json.writeStringField("began", member.began().toString());
        json.writeStringField("at", cohort.placeName(member.start()));
        json.writeBooleanField("came over", member.cameOver());
        json.writeStringField("status", member.now().status().word());
        if (member.now().status() != Status.REACHED) {
            json.writeStringField("stage", member.now().at().stageName());
            json.writeStringField("rung name", member.now().at().rungName());
        }
        ReportJson.spell(json, member.all());
        json.writeNumberField("days", member.days());
        json.writeNumberField("absences", member.absences());
        json.writeNumberField("longest away", member.longestAway());
        json.writeNumberField("by the coach", member.coachMoves());
        json.writeNumberField("refused", member.refused());
        json.writeNumberField("since advance", member.sinceAdvance());
        json.writeBooleanField("stalled", member.isStalled());
        json.writeStringField("last entry", member.lastSeen().toString());
    }
}
