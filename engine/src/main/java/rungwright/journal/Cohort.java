package rungwright.journal;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungwright.finding.Shown;
import rungwright.program.Program;
import rungwright.step.ProgramId;

/**
 * What became of everybody who followed a program: how far they got and how long it took, counting properly
 * who is still under way. It counts; it says nothing about why.
 *
 * <pre>{@code
 * Cohort crew = Cohort.of(program, Folder.read(Path.of("crew"), JournalJson.FORM).journals().stream());
 * crew.goal().sessions().median();       // 14 sessions, say, or nothing where fewer than half got there
 * }</pre>
 *
 * @param title what tells it from another; empty where there is none
 * @param members in the order of the log or folder
 * @param leftOut who or what could not be counted
 */
public record Cohort(String title, Program program, List<Member> members, List<LeftOut> leftOut) {
    /**
     * Groups of fewer people than this are small: no percentages are told of them. Our own choice, no source.
     */
    public static final int SMALL = 10;

    /** Copies the lists. */
    public Cohort {
        members = List.copyOf(members);
        leftOut = List.copyOf(leftOut);
    }

    /** That of a class whose journals these are. */
    public static Cohort of(Program program, Stream<NamedStore> journals) {
        List<Member> members = new ArrayList<>();
        List<LeftOut> leftOut = new ArrayList<>();
        journals.forEach(journal -> add(program, journal, members, leftOut));
        return new Cohort("", program, members, leftOut);
    }

    private static void add(Program program, NamedStore journal, List<Member> members,
            List<LeftOut> leftOut) {
        try {
            Contents contents = journal.store().read();
            Fold fold = Fold.of(program, contents.entries());
            Optional<String> trouble = contents.damage()
                    .map(damage -> "line " + damage.line() + " is damaged: " + damage.reason())
                    .or(() -> fold.otherProgram().map(ProgramId::name)
                            .map(name -> "its entries are of " + Shown.quoted(name)));
            Course course = new Course(journal.name(), program.outline().stages().size());
            fold.happenings().forEach(each -> course.take(each.event(), each.decision()));
            Optional<Member> member = trouble.isPresent() ? Optional.empty() : course.member();
            member.ifPresentOrElse(members::add, () -> leftOut.add(new LeftOut(journal.name(),
                    trouble.orElse(course.reason().isEmpty() ? "not enrolled" : course.reason()))));
        } catch (IOException e) {
            leftOut.add(new LeftOut(journal.name(), "it cannot be opened"));
        }
    }

    /** The same under another title. */
    public Cohort titled(String other) {
        return new Cohort(other, program, members, leftOut);
    }

    /**
     * A cohort a value of a fact, as it was when they began, in the order in which the values first come.
     * What was left out stands with the first.
     */
    public List<Cohort> by(String fact) {
        Map<String, List<Member>> groups = new LinkedHashMap<>();
        members.forEach(each -> groups.computeIfAbsent(each.fact(fact), value -> new ArrayList<>())
                .add(each));
        List<Cohort> cohorts = new ArrayList<>();
        groups.forEach((value, group) -> cohorts.add(new Cohort(fact + ": " + value, program, group,
                cohorts.isEmpty() ? leftOut : List.of())));
        return cohorts;
    }

    /** Whether shares of it would mislead. */
    public boolean isSmall() {
        return members.size() < SMALL;
    }

    /** The number that stands for the goal. */
    public int goalNumber() {
        return program.outline().stages().size();
    }

    /** What a place is called: the stage's name, or {@code goal}. */
    public String placeName(int place) {
        return place == goalNumber() ? "goal" : program.outline().stages().get(place).name();
    }

    /** Each stage in order, and the goal. */
    public List<Reach> reaches() {
        return IntStream.rangeClosed(0, goalNumber()).mapToObj(place -> Reach.of(place, members)).toList();
    }

    /** The goal. */
    public Reach goal() {
        return Reach.of(goalNumber(), members);
    }

    /** What the sessions in each stage came to, in order. */
    public List<StageUse> stages() {
        return IntStream.range(0, goalNumber()).mapToObj(stage -> StageUse.of(stage, members)).toList();
    }

    /** How often each rule spoke, in the order of the text. */
    public List<RuleUse> rules() {
        return RuleUse.of(program.outline(), members);
    }
}
