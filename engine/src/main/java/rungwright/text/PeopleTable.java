package rungwright.text;

import java.util.List;
import rungwright.finding.Shown;
import rungwright.journal.Cohort;
import rungwright.journal.Member;
import rungwright.journal.Spell;
import rungwright.step.Status;

/** The trainees of a cohort, a row each. */
final class PeopleTable {
    private PeopleTable() {
    }

    static ReportTable of(Cohort cohort) {
        return new ReportTable("trainees", "Trainee by trainee", "Absences: how often a break moved them."
                + " Longest away: the most days between two sessions. Days: from the first to the"
                + " last entry.",
                List.of("Trainee", "Began", "At", "Now", "Sessions", "Days", "Moved on", "Stayed",
                        "Fell back", "Stopped", "Absences", "Longest away", "By the coach", "Refused",
                        "Last entry"),
                cohort.members().stream().map(member -> row(cohort, member)).toList());
    }

    private static List<String> row(Cohort cohort, Member member) {
        Spell all = member.all();
        return List.of(Shown.text(member.name()), member.began().toString(), began(cohort, member),
                now(member), number(member.sessions()), number(member.days()), number(all.advances()),
                number(all.holds()), number(all.fallBacks()), number(all.stops()), number(member.absences()),
                number(member.longestAway()), number(member.coachMoves()), number(member.refused()),
                member.lastSeen().toString());
    }

    /** Where they began. */
    static String began(Cohort cohort, Member member) {
        String place = member.start() == cohort.goalNumber() ? "the goal"
                : Shown.text(cohort.placeName(member.start()));
        return member.cameOver() ? place + " (came over)" : place;
    }

    /** Where they stand now. */
    static String now(Member member) {
        return member.now().status() == Status.REACHED ? "the goal"
                : SheetWords.place(member.now().at()) + (member.now().status() == Status.STOPPED
                        ? ", stopped" : "");
    }

    private static String number(long number) {
        return ReportTables.number(number);
    }
}
