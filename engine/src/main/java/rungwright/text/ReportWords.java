package rungwright.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import rungwright.finding.Shown;
import rungwright.journal.Cohort;
import rungwright.journal.KaplanMeier;
import rungwright.journal.Member;
import rungwright.journal.Reach;
import rungwright.journal.Spell;
import rungwright.step.Status;

/** What a report says in sentences, for whoever lays it out. */
public final class ReportWords {
    private ReportWords() {
    }

    /** {@code First bar dip, version 1}, and what tells the cohort from another. */
    public static String program(Cohort cohort) {
        return Shown.text(cohort.program().outline().name()) + ", version "
                + Shown.text(cohort.program().outline().version());
    }

    /** {@code 12 trainees: 2 at the goal, 9 in training, 1 stopped.} */
    public static String summary(Cohort cohort) {
        List<String> parts = new ArrayList<>();
        part(parts, cohort, Status.REACHED, "at the goal");
        part(parts, cohort, Status.TRAINING, "in training");
        part(parts, cohort, Status.STOPPED, "stopped, waiting for clearance");
        return Count.of(cohort.members().size(), "trainee") + (parts.isEmpty() ? "" : ": ")
                + String.join(", ", parts)
                + (cohort.leftOut().isEmpty() ? "" : "; " + cohort.leftOut().size() + " left out") + ".";
    }

    private static void part(List<String> parts, Cohort cohort, Status status, String words) {
        long people = cohort.members().stream().filter(each -> each.now().status() == status).count();
        if (people > 0) {
            parts.add(people + " " + words);
        }
    }

    /** What stands out, in numbers alone. */
    public static List<String> sentences(Cohort cohort) {
        List<String> sentences = new ArrayList<>();
        if (cohort.isSmall() && !cohort.members().isEmpty()) {
            sentences.add("A small group, under " + Cohort.SMALL
                    + " people: read the numbers as what became of"
                    + " these few. No percentages are given, and another such group may come out otherwise.");
        }
        time(cohort.goal()).ifPresent(sentences::add);
        most(cohort, "Stayed most", Spell::holds).ifPresent(sentences::add);
        most(cohort, "Fell back most", Spell::fallBacks).ifPresent(sentences::add);
        most(cohort, "Stopped most", Spell::stops).ifPresent(sentences::add);
        absences(cohort).ifPresent(sentences::add);
        int refused = cohort.members().stream().mapToInt(Member::refused).sum();
        if (refused > 0) {
            sentences.add((refused == 1 ? "1 entry was refused and counts" : refused
                    + " entries were refused and"
                    + " count") + " for nothing; `rungwright replay` or `history` says why.");
        }
        return sentences;
    }

    private static Optional<String> time(Reach goal) {
        if (goal.sessions().waits().isEmpty()) {
            return Optional.empty();
        }
        Optional<Long> sessions = goal.sessions().median();
        Optional<Long> days = goal.days().median();
        if (sessions.isEmpty() && days.isEmpty()) {
            return Optional.of("The middle time to the goal is not known yet: too few have got there.");
        }
        return Optional.of("Half had got to the goal " + middle("session", goal.sessions()) + ", and "
                + middle("day", goal.days()) + ".");
    }

    /** A middle time, and on how few it rests. */
    private static String middle(String word, KaplanMeier times) {
        return times.median().map(time -> "by " + word + " " + time + " (" + times.left(time)
                + " left to count then)").orElse("by a " + word + " that is not known yet");
    }

    private static Optional<String> most(Cohort cohort, String lead, ToIntFunction<Spell> what) {
        return cohort.stages().stream().filter(stage -> what.applyAsInt(stage.sessions()) > 0)
                .reduce((first, next) -> what.applyAsInt(next.sessions()) > what.applyAsInt(first.sessions())
                        ? next : first)
                .map(stage -> lead + ": in " + Shown.text(cohort.placeName(stage.stage())) + ", "
                        + what.applyAsInt(stage.sessions()) + " of "
                        + Count.of(stage.sessions().sessions(), "session") + " there.");
    }

    private static Optional<String> absences(Cohort cohort) {
        int absences = cohort.members().stream().mapToInt(Member::absences).sum();
        Optional<Member> longest = cohort.members().stream().filter(each -> each.longestAway() > 0)
                .max(Comparator.comparingLong(Member::longestAway));
        return longest.map(who -> (absences == 1 ? "1 absence" : Count.of(absences, "absence"))
                + " moved somebody; the longest time between two sessions was "
                + Count.of(who.longestAway(), "day") + ".");
    }

    /** How it was counted, and what must not be read into it. */
    public static List<String> method(List<Cohort> cohorts) {
        List<String> method = new ArrayList<>(List.of(
                "Times count from a trainee's first day. Who is not there yet counts as under way until"
                + " their last entry, and then no longer (the estimate of Kaplan and Meier). It takes it that"
                + " those would go on like the others: where mostly those leave who find it hard, the"
                + " true times are longer.",
                "A coach's own move is no decision of the program: from then on that trainee's time counts no"
                + " longer."));
        if (cohorts.stream().map(each -> each.program().fingerprint()).distinct().count() > 1) {
            method.add("Each version decides about the same sessions. They were trained under one of"
                    + " them; what people would have done under the other is not known.");
        }
        method.add("This report counts what happened. It does not say what caused it, and groups may"
                + " differ in more than what tells them apart here.");
        return method;
    }
}
