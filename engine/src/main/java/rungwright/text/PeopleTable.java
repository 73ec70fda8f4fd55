package rungwright.text;

import java.time.LocalDate;
import java.util.List;
import rungwright.finding.Shown;
import rungwright.journal.Cohort;
import rungwright.journal.Member;
import rungwright.journal.Spell;

/** The trainees of a cohort, a row each. */
record PeopleTable(ReportWords words, Wording wording, Cohort cohort) {
    ReportTable table() {
        return ReportTable.of("trainees", words.words(), "trainees.", cohort.members().stream()
                .map(this::row).toList());
    }

    private List<String> row(Member member) {
        Spell all = member.all();
        return List.of(Shown.text(member.name()), day(member.began()), words.began(cohort, member),
                words.now(wording, member), number(member.sessions()), number(member.days()),
                number(all.advances()),
                number(all.holds()), number(all.fallBacks()), number(all.stops()), number(member.absences()),
                number(member.longestAway()), number(member.coachMoves()), number(member.refused()),
                day(member.lastSeen()));
    }

    private String day(LocalDate day) {
        return words.words().language().day(day);
    }

    private static String number(long number) {
        return ReportTables.number(number);
    }
}
