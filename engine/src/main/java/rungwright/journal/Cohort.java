package rungwright.journal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungwright.program.Program;

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

    /**
     * That of a class whose journals these are. Journals of a parallel stream are read side by side, each by
     * one thread, and their people still stand in their order.
     */
    public static Cohort of(Program program, Stream<NamedStore> journals) {
        List<Counted> counted = journals.map(journal -> Counted.of(program, journal)).toList();
        return new Cohort("", program, counted.stream().flatMap(each -> each.member().stream()).toList(),
                counted.stream().flatMap(each -> each.leftOut().stream()).toList());
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

    /** What the sessions on each rung came to, for stages that have rungs: easiest first. */
    public List<RungUse> rungs() {
        return program.outline().stages().stream().flatMap(stage -> RungUse.of(stage, members).stream())
                .toList();
    }

    /** How often each rule spoke, in the order of the text. */
    public List<RuleUse> rules() {
        return RuleUse.of(program.outline(), members);
    }
}
