package rungwright.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import rungwright.finding.Shown;
import rungwright.journal.Cohort;
import rungwright.journal.KaplanMeier;
import rungwright.journal.Member;
import rungwright.journal.Reach;
import rungwright.journal.RungUse;
import rungwright.journal.Spell;
import rungwright.journal.StageUse;
import rungwright.program.Program;
import rungwright.step.Status;

/** What a report says in one language, in sentences and single words, for whoever lays it out. */
public final class ReportWords {
    private final Words words;

    private ReportWords(Words words) {
        this.words = words;
    }

    /** In that language. */
    public static ReportWords in(Language language) {
        return new ReportWords(language.words("report"));
    }

    /** The single phrases. */
    public Words words() {
        return words;
    }

    /** {@code First bar dip, version 1}. */
    public String program(Cohort cohort) {
        return words.say("program", Shown.text(cohort.program().outline().name()),
                Shown.text(cohort.program().outline().version()));
    }

    /** What tells a version from another: {@code version 2}. */
    public String version(Program program) {
        return words.say("version", Shown.text(program.outline().version()));
    }

    /** Two titles; where they are the same, with what tells them apart. */
    public List<String> titles(String title, String other) {
        return title.equals(other) ? List.of(words.say("first", title), words.say("second", other))
                : List.of(title, other);
    }

    /** What a group is called whose members all have one value of a fact: {@code qown: ja}. */
    public String group(Cohort group, String fact) {
        Wording wording = wording(group);
        return fact + ": " + group.members().get(0).facts().getOrDefault(fact, List.of()).stream()
                .map(item -> wording.asked(fact, item)).collect(Collectors.joining(", "));
    }

    /** {@code 12 trainees: 2 at the goal, 9 in training, 1 stopped.} */
    public String summary(Cohort cohort) {
        List<String> parts = new ArrayList<>();
        part(parts, cohort, Status.REACHED, "state.reached");
        part(parts, cohort, Status.TRAINING, "state.training");
        part(parts, cohort, Status.STOPPED, "state.stopped");
        String people = words.count("people", cohort.members().size());
        String said = parts.isEmpty() ? people : words.say("summary", people, String.join(", ", parts));
        String all = cohort.leftOut().isEmpty() ? said
                : words.say("andLeftOut", said, Integer.toString(cohort.leftOut().size()));
        return words.say("sentence", all);
    }

    private void part(List<String> parts, Cohort cohort, Status status, String key) {
        long people = cohort.members().stream().filter(each -> each.now().status() == status).count();
        if (people > 0) {
            parts.add(words.say(key, Long.toString(people)));
        }
    }

    /** What stands out, in numbers alone. */
    public List<String> sentences(Cohort cohort) {
        List<String> sentences = new ArrayList<>();
        if (cohort.isSmall() && !cohort.members().isEmpty()) {
            sentences.add(words.say("small", Integer.toString(Cohort.SMALL)));
        }
        time(cohort.goal(), sentences);
        most(cohort, "stayed", Spell::holds).ifPresent(sentences::add);
        most(cohort, "fellBack", Spell::fallBacks).ifPresent(sentences::add);
        most(cohort, "stopped", Spell::stops).ifPresent(sentences::add);
        absences(cohort).ifPresent(sentences::add);
        int refused = cohort.members().stream().mapToInt(Member::refused).sum();
        if (refused > 0) {
            sentences.add(words.count("refusedEntries", refused));
        }
        return sentences;
    }

    private void time(Reach goal, List<String> sentences) {
        if (goal.sessions().waits().isEmpty()) {
            return;
        }
        if (goal.sessions().median().isEmpty() && goal.days().median().isEmpty()) {
            sentences.add(words.say("middleUnknown"));
            return;
        }
        sentences.add(words.say("middle", middle(goal.sessions(), "bySession", "bySomeSession"),
                middle(goal.days(), "byDay", "bySomeDay")));
        sentences.add(words.say("limits", limits("inSessions.", goal.sessions()),
                limits("inDays.", goal.days())));
    }

    /** A middle time, and on how few it rests. */
    private String middle(KaplanMeier times, String known, String unknown) {
        return times.median().map(time -> words.say(known, Long.toString(time),
                Integer.toString(times.left(time)))).orElseGet(() -> words.say(unknown));
    }

    private String limits(String unit, KaplanMeier times) {
        Optional<String> low = times.medianLow().map(time -> Long.toString(time));
        Optional<String> high = times.medianHigh().map(time -> Long.toString(time));
        if (low.isPresent() && high.isPresent()) {
            return words.say(unit + "both", low.get(), high.get());
        }
        return low.map(time -> words.say(unit + "low", time))
                .or(() -> high.map(time -> words.say(unit + "high", time)))
                .orElseGet(() -> words.say(unit + "unknown"));
    }

    private Optional<String> most(Cohort cohort, String key, ToIntFunction<Spell> what) {
        Optional<StageUse> most = cohort.stages().stream()
                .max(Comparator.comparingInt((StageUse stage) -> what.applyAsInt(stage.sessions()))
                        .thenComparing(stage -> -stage.stage()))
                .filter(stage -> what.applyAsInt(stage.sessions()) > 0);
        return most.map(stage -> most("most." + key, Shown.text(cohort.placeName(stage.stage())),
                stage.sessions(), what) + mostRung(cohort, stage, key, what));
    }

    /** Among the rungs of a stage, where there are several to tell apart. */
    private String mostRung(Cohort cohort, StageUse stage, String key, ToIntFunction<Spell> what) {
        List<RungUse> rungs = cohort.rungs().stream().filter(each -> each.at().stage() == stage.stage())
                .toList();
        if (rungs.size() < 2) {
            return "";
        }
        RungUse most = rungs.stream().reduce((first, next) -> what.applyAsInt(next.sessions())
                > what.applyAsInt(first.sessions()) ? next : first).orElseThrow();
        return " " + most("mostRung." + key, wording(cohort).rung(most.at().rungName()), most.sessions(),
                what);
    }

    private String most(String key, String place, Spell sessions, ToIntFunction<Spell> what) {
        return words.say(key, place, Integer.toString(what.applyAsInt(sessions)),
                words.count("sessions", sessions.sessions()));
    }

    private Optional<String> absences(Cohort cohort) {
        int absences = cohort.members().stream().mapToInt(Member::absences).sum();
        Optional<Member> longest = cohort.members().stream().filter(each -> each.longestAway() > 0)
                .max(Comparator.comparingLong(Member::longestAway));
        return longest.map(who -> words.count("absences", absences, words.count("days", who.longestAway())));
    }

    /** How it was counted, and what must not be read into it. */
    public List<String> method(List<Cohort> cohorts) {
        List<String> method = new ArrayList<>(List.of(words.say("method.times"), words.say("method.limits"),
                words.say("method.coach")));
        if (cohorts.stream().map(each -> each.program().fingerprint()).distinct().count() > 1) {
            method.add(words.say("method.versions"));
        }
        method.add(words.say("method.cause"));
        return method;
    }

    /** The words for what its program says. */
    Wording wording(Cohort cohort) {
        return Wording.of(cohort.program().outline(), words.language());
    }

    /** A place by its number: a stage's name, or the goal. */
    String place(Cohort cohort, int place) {
        return place == cohort.goalNumber() ? words.say("theGoal") : Shown.text(cohort.placeName(place));
    }

    /** Where a member began. */
    String began(Cohort cohort, Member member) {
        String place = place(cohort, member.start());
        return member.cameOver() ? words.say("cameOver", place) : place;
    }

    /** Where a member stands now. */
    String now(Wording wording, Member member) {
        if (member.now().status() == Status.REACHED) {
            return words.say("theGoal");
        }
        String place = wording.place(member.now().at());
        return member.now().status() == Status.STOPPED ? words.say("placeStopped", place) : place;
    }
}
