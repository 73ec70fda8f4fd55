package rungwright.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.journal.Cohort;
import rungwright.journal.KaplanMeier;
import rungwright.journal.Member;
import rungwright.journal.Reach;
import rungwright.journal.RuleUse;
import rungwright.journal.Spell;
import rungwright.journal.StageUse;
import rungwright.measure.Ratio;

/** The tables of a report: every number that it shows stands in one of them. */
public final class ReportTables {
    private static final int PLACES = 4;

    private final Cohort cohort;

    private ReportTables(Cohort cohort) {
        this.cohort = cohort;
    }

    /** Those of one cohort that a reader sees, in their order. */
    public static List<ReportTable> of(Cohort cohort) {
        ReportTables tables = new ReportTables(cohort);
        return List.of(tables.reached(), tables.times(Member.Count.SESSIONS), tables.times(Member.Count.DAYS),
                tables.stages(), tables.rules(), PeopleTable.of(cohort), tables.leftOut());
    }

    /** All that a page draws of the way to each stage and the goal, in one table. */
    public static ReportTable curves(Cohort cohort) {
        ReportTables tables = new ReportTables(cohort);
        List<List<String>> rows = new ArrayList<>();
        for (Reach reach : cohort.reaches()) {
            rows.addAll(tables.curve(reach, Member.Count.SESSIONS));
            rows.addAll(tables.curve(reach, Member.Count.DAYS));
        }
        return new ReportTable("curves", "Still under way", "", List.of("To", "Counted in", "Time",
                "Under way until then", "Arrived", "Last heard of", "Still under way", "As a decimal"), rows);
    }

    /** Cohorts side by side, a row each. */
    public static ReportTable sideBySide(List<Cohort> cohorts) {
        List<List<String>> rows = cohorts.stream().map(cohort -> {
            Reach goal = cohort.goal();
            Spell all = cohort.members().stream().map(Member::all).reduce(Spell.NONE, Spell::plus);
            return List.of(Shown.text(cohort.title()), number(cohort.members().size()),
                    number(goal.reached()),
                    when(goal.sessions().median()), when(goal.days().median()), number(all.sessions()),
                    number(all.fallBacks()), number(all.stops()));
        }).toList();
        return new ReportTable("groups", "Side by side",
                "By session, by day: half of the group had got to the"
                + " goal by then; the group's own tables say how that is counted.", List.of("Group",
                "Trainees",
                "At the goal", "By session", "By day", "Sessions", "Fell back", "Stops"), rows);
    }

    private ReportTable reached() {
        List<String> columns = new ArrayList<>(List.of("Place", "Began here", "Came here", "By the coach",
                "Not yet", "Reached"));
        if (!cohort.isSmall()) {
            columns.add("Share");
        }
        return new ReportTable("reached", "How far they got", "Who began in a stage beyond, or went past one,"
                + " counts as there. By the coach: those of them whom the coach had moved before or then,"
                + " or who had come over from another version.", columns,
                cohort.reaches().stream().map(this::reached).toList());
    }

    private List<String> reached(Reach reach) {
        List<String> row = new ArrayList<>(List.of(place(reach), number(reach.began()), number(reach.came()),
                number(reach.byCoach()), number(reach.underWay()), number(reach.reached())));
        if (!cohort.isSmall()) {
            row.add(percent(Ratio.of(reach.reached(), cohort.members().size())));
        }
        return row;
    }

    private ReportTable times(Member.Count count) {
        String one = count == Member.Count.SESSIONS ? "session" : "day";
        return new ReportTable("times-in-" + count.word(), "How long it took, in " + count.word(),
                "Of the people who began before it: by which " + one + " a quarter, half and three quarters"
                + " had got there. No further: under way at their last entry, or moved by the coach; they"
                + " count until then. Left: on how many the half rests. Not yet: too few have got there.",
                List.of("To", "People", "Arrived", "No further", "Quarter by", "Half by", "Left",
                        "3 quarters by"),
                cohort.reaches().stream().filter(reach -> !reach.in(count).waits().isEmpty())
                        .map(reach -> times(reach, reach.in(count))).toList());
    }

    private List<String> times(Reach reach, KaplanMeier times) {
        return List.of(place(reach), number(times.waits().size()), number(times.arrived()),
                number(times.stillUnderWay()), when(times.firstQuarter()), when(times.median()),
                times.median().map(times::left).map(ReportTables::number).orElse("not yet"),
                when(times.thirdQuarter()));
    }

    private ReportTable stages() {
        return new ReportTable("stages", "Where they go on, stay and fall back",
                "Sessions by what they came to."
                + " There now: in training or stopped. Stalled: those of them in training who have"
                + " had 6 sessions or more without an advance.", List.of("Stage", "People", "Sessions",
                "Moved on", "Stayed", "Fell back", "Stopped", "There now", "Stalled"),
                cohort.stages().stream().map(this::stage).toList());
    }

    private List<String> stage(StageUse stage) {
        Spell all = stage.sessions();
        return List.of(Shown.text(cohort.placeName(stage.stage())), number(stage.people()),
                number(all.sessions()), number(all.advances()), number(all.holds()), number(all.fallBacks()),
                number(all.stops()), number(stage.now()), number(stage.stalled()));
    }

    private ReportTable rules() {
        return new ReportTable("rules", "How often each rule spoke", "Decided: how often it had the last"
                + " word. Only counted: how often it was met and waits for more, as in 1 of 2. A break's"
                + " rule that leaves a trainee where they are decides nothing.",
                List.of("Rule", "Line", "Decided", "Only counted", "Trainees"),
                cohort.rules().stream().map(ReportTables::rule).toList());
    }

    private static List<String> rule(RuleUse rule) {
        return List.of(Shown.text(rule.rule().label()), number(rule.rule().place().line()),
                number(rule.use().fired()), number(rule.use().counted()), number(rule.people()));
    }

    private ReportTable leftOut() {
        return new ReportTable("left-out", "Left out", "", List.of("Trainee", "Why"), cohort.leftOut()
                .stream()
                .map(each -> List.of(Shown.text(each.name()), Shown.whole(each.reason()))).toList());
    }

    private List<List<String>> curve(Reach reach, Member.Count count) {
        return reach.in(count).steps().stream().map(step -> List.of(place(reach), count.word(),
                number(step.time()), number(step.atRisk()), number(step.arrived()), number(step.lost()),
                step.underWay().toString(), decimal(step.underWay(), PLACES))).toList();
    }

    private String place(Reach reach) {
        return reach.place() == cohort.goalNumber() ? "the goal"
                : Shown.text(cohort.placeName(reach.place()));
    }

    static String number(long number) {
        return Long.toString(number);
    }

    private static String when(Optional<Long> time) {
        return time.map(ReportTables::number).orElse("not yet");
    }

    /** A share in whole percent. */
    static String percent(Ratio share) {
        return decimal(share.times(100), 0) + " %";
    }

    private static String decimal(Ratio value, int places) {
        return new BigDecimal(value.numerator()).divide(new BigDecimal(value.denominator()), places,
                RoundingMode.HALF_EVEN).toPlainString();
    }
}
