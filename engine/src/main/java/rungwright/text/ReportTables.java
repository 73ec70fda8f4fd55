package rungwright.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rungwright.finding.Shown;
import rungwright.journal.Cohort;
import rungwright.journal.KaplanMeier;
import rungwright.journal.Limits;
import rungwright.journal.Member;
import rungwright.journal.Reach;
import rungwright.journal.RuleUse;
import rungwright.journal.RungUse;
import rungwright.journal.Sheet;
import rungwright.journal.Spell;
import rungwright.measure.Ratio;

/** The tables of a report: every number that it shows stands in one of them. */
public final class ReportTables {
    private static final int PLACES = 4;
    private static final String NONE = "–";

    private final Cohort cohort;
    private final ReportWords told;
    private final Words words;
    private final Wording wording;

    private ReportTables(Cohort cohort, Language language) {
        this.cohort = cohort;
        this.told = ReportWords.in(language);
        this.words = told.words();
        this.wording = told.wording(cohort);
    }

    /** Those of one cohort that a reader sees, in their order. */
    public static List<ReportTable> of(Cohort cohort, Language language) {
        ReportTables tables = new ReportTables(cohort, language);
        return List.of(tables.reached(), tables.times(Member.Count.SESSIONS, "times.sessions."),
                tables.times(Member.Count.DAYS, "times.days."), tables.stages(), tables.rungs(),
                tables.rules(), new PeopleTable(tables.told, tables.wording, cohort).table(),
                tables.leftOut());
    }

    /** All that a page draws of the way to each stage and the goal, in one table. */
    public static ReportTable curves(Cohort cohort, Language language) {
        ReportTables tables = new ReportTables(cohort, language);
        List<List<String>> rows = new ArrayList<>();
        for (Reach reach : cohort.reaches()) {
            rows.addAll(tables.curve(reach, Member.Count.SESSIONS, "unit.sessions"));
            rows.addAll(tables.curve(reach, Member.Count.DAYS, "unit.days"));
        }
        return new ReportTable("curves", tables.words.say("curves.heading"), "",
                ReportTable.columns(tables.words, "curves."), rows);
    }

    /** Cohorts side by side, a row each. */
    public static ReportTable sideBySide(List<Cohort> cohorts, Language language) {
        List<List<String>> rows = cohorts.stream().map(cohort -> {
            Reach goal = cohort.goal();
            ReportTables tables = new ReportTables(cohort, language);
            Spell all = cohort.members().stream().map(Member::all).reduce(Spell.NONE, Spell::plus);
            return List.of(Shown.text(cohort.title()), number(cohort.members().size()),
                    number(goal.reached()), tables.when(goal.sessions().median()),
                    tables.when(goal.days().median()), number(all.sessions()), number(all.fallBacks()),
                    number(all.stops()));
        }).toList();
        return ReportTable.of("groups", language.words("report"), "groups.", rows);
    }

    private ReportTable reached() {
        List<String> columns = new ArrayList<>(ReportTable.columns(words, "reached."));
        if (!cohort.isSmall()) {
            columns.add(words.say("reached.share"));
        }
        return new ReportTable("reached", words.say("reached.heading"), words.say("reached.note"), columns,
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

    private ReportTable times(Member.Count count, String part) {
        return new ReportTable("times-in-" + count.word(), words.say(part + "heading"),
                words.say(part + "note"), ReportTable.columns(words, "times."),
                cohort.reaches().stream().filter(reach -> !reach.in(count).waits().isEmpty())
                        .map(reach -> times(reach, reach.in(count))).toList());
    }

    private List<String> times(Reach reach, KaplanMeier times) {
        return List.of(place(reach), number(times.waits().size()), number(times.arrived()),
                number(times.stillUnderWay()), when(times.firstQuarter()), when(times.median()),
                times.median().map(times::left).map(ReportTables::number).orElse(NONE),
                when(times.thirdQuarter()), times.medianLow().map(ReportTables::number).orElse(NONE),
                high(times));
    }

    /** The upper limit; where everybody has arrived and none was found, there will be none. */
    private String high(KaplanMeier times) {
        return times.stillUnderWay() == 0 ? times.medianHigh().map(ReportTables::number).orElse(NONE)
                : when(times.medianHigh());
    }

    private ReportTable stages() {
        return new ReportTable("stages", words.say("stages.heading"),
                words.say("stages.note", Integer.toString(Sheet.USUALLY_STALLED_AFTER)),
                ReportTable.columns(words, "stages."), cohort.stages().stream().map(stage ->
                        used(Shown.text(cohort.placeName(stage.stage())), stage.people(), stage.sessions(),
                                stage.now(), stage.stalled())).toList());
    }

    private ReportTable rungs() {
        return ReportTable.of("rungs", words, "rungs.", cohort.rungs().stream().map(rung -> used(rung(rung),
                rung.people(), rung.sessions(), rung.now(), rung.stalled())).toList());
    }

    private String rung(RungUse rung) {
        return words.say("rungs.row", Shown.text(rung.at().stageName()),
                wording.rung(rung.at().rungName()));
    }

    private static List<String> used(String place, int people, Spell all, int now, int stalled) {
        return List.of(place, number(people), number(all.sessions()), number(all.advances()),
                number(all.holds()), number(all.fallBacks()), number(all.stops()), number(now),
                number(stalled));
    }

    private ReportTable rules() {
        return ReportTable.of("rules", words, "rules.",
                cohort.rules().stream().map(this::rule).toList());
    }

    private List<String> rule(RuleUse rule) {
        return List.of(Shown.text(wording.label(rule.rule().label())), number(rule.rule().place().line()),
                number(rule.use().fired()), number(rule.use().counted()), number(rule.people()));
    }

    private ReportTable leftOut() {
        LeftOutText why = new LeftOutText(cohort.program().outline(), wording, words);
        return new ReportTable("left-out", words.say("left.heading"), "",
                ReportTable.columns(words, "left."), cohort.leftOut().stream()
                .map(each -> List.of(Shown.text(each.name()), each.cause().match(why))).toList());
    }

    private List<List<String>> curve(Reach reach, Member.Count count, String unit) {
        return reach.in(count).steps().stream().map(step -> List.of(place(reach), words.say(unit),
                number(step.time()), number(step.atRisk()), number(step.arrived()), number(step.lost()),
                step.underWay().toString(), decimal(step.underWay(), PLACES), limit(step, Limits::low),
                limit(step, Limits::high))).toList();
    }

    private static String limit(KaplanMeier.Step step, Function<Limits, BigDecimal> which) {
        return step.limits().map(which).map(limit -> limit.setScale(PLACES, RoundingMode.HALF_EVEN)
                .toPlainString()).orElse("");
    }

    private String place(Reach reach) {
        return told.place(cohort, reach.place());
    }

    static String number(long number) {
        return Long.toString(number);
    }

    private String when(Optional<Long> time) {
        return time.map(ReportTables::number).orElseGet(() -> words.say("notYet"));
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
