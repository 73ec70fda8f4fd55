package rungwright.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.program.Checked;
import rungwright.program.Outline;
import rungwright.program.RuleList;

/** The engine's findings about a small spec, in the oracle's terms. */
final class EngineFindings {
    private static final Set<Code> PROOF = Set.of(Code.GAP, Code.OVERLAP, Code.NO_RUNG_BELOW, Code.NO_TARGET,
            Code.NEVER_TRUE);

    /** A rule of the oracle, with the section it stands in. */
    private record Known(String where, List<Rule> rules, int index) {
        String id() {
            return Toy.id(where, rules, index);
        }
    }

    private final Toy toy;
    private final List<Finding> findings;
    private final Map<Place, Known> rules = new TreeMap<>();
    private final Map<Place, String> sections = new TreeMap<>();

    EngineFindings(Toy toy, Checked checked) {
        this.toy = toy;
        this.findings = checked.findings();
        Outline outline = checked.outline().orElseThrow();
        know("stop", toy.stops(), outline.stop().rules());
        know("every stage", toy.every(), outline.everyStage().rules());
        outline.afterABreak().ifPresent(list -> know("after a break", toy.breaks(), list));
        outline.placement().ifPresent(list -> know("place", toy.place().orElseThrow().rules(), list));
        for (int i = 0; i < toy.stages().size(); i++) {
            Toy.Stage stage = toy.stages().get(i);
            know(stage.name(), stage.rules(), outline.stages().get(i).rules());
            sections.put(outline.stages().get(i).place(), "stage " + stage.name());
        }
    }

    private void know(String where, List<Rule> own, RuleList list) {
        know(where, own, list.rules());
        sections.put(list.place(), where);
    }

    private void know(String where, List<Rule> own, List<rungwright.program.Rule> theirs) {
        for (int i = 0; i < own.size(); i++) {
            rules.put(theirs.get(i).place(), new Known(where, own, i));
        }
    }

    private Stream<Finding> of(Code code) {
        return findings.stream().filter(finding -> finding.code() == code);
    }

    /** The codes of errors that are none of the proof's, and so should not be there. */
    Set<String> otherErrors(Set<Code> allowed) {
        return findings.stream().filter(Finding::isError)
                .filter(finding -> !PROOF.contains(finding.code()) && !allowed.contains(finding.code()))
                .map(finding -> finding.code().word()).collect(Collectors.toCollection(TreeSet::new));
    }

    /** The codes of the proof's errors. */
    Set<String> proofErrors() {
        return findings.stream().filter(finding -> finding.isError() && PROOF.contains(finding.code()))
                .map(finding -> finding.code().word()).collect(Collectors.toCollection(TreeSet::new));
    }

    boolean has(Code code) {
        return of(code).findAny().isPresent();
    }

    /** The sections that findings of a code are about. */
    Set<String> sections(Code code) {
        return of(code).map(finding -> sections.getOrDefault(finding.place(), "nowhere"))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Names of stages that errors, or all findings, of a code are about. */
    Set<String> stages(Code code, boolean errorsOnly) {
        return of(code).filter(finding -> finding.isError() || !errorsOnly)
                .map(finding -> sections.get(finding.place()).replaceFirst("stage ", ""))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The rules that findings of a code stand at; for a start without place rules the word place. */
    Set<String> rules(Code code) {
        return of(code).map(finding -> rules.containsKey(finding.place()) ? rules.get(finding.place()).id()
                : "place").collect(Collectors.toCollection(TreeSet::new));
    }

    /** The pairs of rules that findings of a code name. */
    Set<String> pairs(Code code) {
        return of(code).map(finding -> pair(finding).stream().map(Known::id)
                .collect(Collectors.joining(" | ")))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private List<Known> pair(Finding finding) {
        return List.of(rules.get(finding.related().get(0).place()), rules.get(finding.place()));
    }

    /** Findings whose witness does not show the oracle its trouble. */
    List<String> unshown() {
        return findings.stream().filter(finding -> !shows(finding)).map(finding -> "not shown: " + finding)
                .toList();
    }

    /** Whether the oracle sees the trouble that a finding's witness shows; true where it should show none. */
    private boolean shows(Finding finding) {
        boolean wanted = List.of(Code.GAP, Code.OVERLAP, Code.SAME_OUTCOME_OVERLAP, Code.NO_RUNG_BELOW,
                Code.NO_TARGET).contains(finding.code());
        if (!wanted || finding.code() == Code.NO_TARGET && !rules.containsKey(finding.place())) {
            return true;
        }
        WitnessReader reader = new WitnessReader(toy, finding.witness().orElseThrow());
        List<Person> people = new ArrayList<>(reader.people());
        reader.stage().ifPresent(stage -> people.removeIf(person -> new Targets(toy, person, Map.of())
                .rungs(toy.stageNumber(stage.name())).isEmpty()));
        return !people.isEmpty() && people.stream().allMatch(person -> shows(finding, reader, person));
    }

    private boolean shows(Finding finding, WitnessReader reader, Person person) {
        if (finding.code() == Code.GAP) {
            return gap(sections.get(finding.place()), reader, person);
        }
        List<Known> those = finding.related().isEmpty() || finding.code() == Code.NO_TARGET
                || finding.code() == Code.NO_RUNG_BELOW ? List.of(rules.get(finding.place())) : pair(finding);
        Known one = those.get(those.size() - 1);
        List<Integer> met = reader.met(one.rules(), person);
        boolean all = those.stream().allMatch(known -> met.contains(known.index()))
                && outranked(one.where(), reader, person).isEmpty();
        boolean targets = finding.code() == Code.NO_TARGET || finding.code() == Code.NO_RUNG_BELOW;
        return all && (!targets || reader.leadsNowhere(one.rules().get(one.index()), person));
    }

    private boolean gap(String section, WitnessReader reader, Person person) {
        if (section.equals("place")) {
            return reader.met(toy.place().orElseThrow().rules(), person).isEmpty();
        }
        if (section.equals("after a break")) {
            return reader.isBreak() && reader.met(toy.breaks(), person).isEmpty();
        }
        Toy.Stage stage = reader.stage().orElseThrow();
        return section.equals("stage " + stage.name()) && reader.isAnswered(stage, person)
                && outranked(stage.name(), reader, person).isEmpty()
                && reader.met(stage.rules(), person).isEmpty();
    }

    /** Rules that speak before those of a section. */
    private List<Integer> outranked(String where, WitnessReader reader, Person person) {
        List<Integer> met = new ArrayList<>();
        boolean none = List.of("stop", "place", "after a break").contains(where);
        if (!none) {
            met.addAll(reader.met(toy.stops(), person));
        }
        if (!none && !where.equals("every stage")) {
            met.addAll(reader.met(toy.every(), person));
        }
        return met;
    }
}
