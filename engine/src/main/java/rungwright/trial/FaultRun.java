package rungwright.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwright.compare.Comparison;
import rungwright.compare.Difference;
import rungwright.compare.Part;
import rungwright.compare.Proof;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.spec.CaseSpec;
import rungwright.spec.Spec;
import rungwright.yaml.CasesReading;

/** Plants faults in a spec, and sees whether its cases notice. */
public final class FaultRun {
    private final Tryouts tryouts;
    private final Program program;
    private final List<Case> cases;
    private final long budget;

    private FaultRun(Tryouts tryouts, List<Case> cases, long budget) {
        this.tryouts = tryouts;
        this.program = tryouts.program();
        this.cases = List.copyOf(cases);
        this.budget = budget;
    }

    /**
     * What becomes of every fault that we know to plant.
     *
     * @param spec the spec whose program the tryouts are of
     * @param cases cases that all pass
     * @param budget how many boxes each proof may look at for a stage
     * @param heard hears how many of the faults are done
     */
    public static FaultReport of(Spec spec, Tryouts tryouts, List<Case> cases, long budget, Heard heard) {
        FaultRun run = new FaultRun(tryouts, cases, budget);
        List<Fault> faults = Planting.of(spec, tryouts.program().outline());
        List<FaultReport.Result> results = new ArrayList<>();
        for (Fault fault : faults) {
            results.add(run.result(fault));
            heard.of(results.size(), faults.size());
        }
        return new FaultReport(results);
    }

    /**
     * Cases to which one is added for each fault that none of them notices, as far as one was found.
     *
     * @param heard hears how many of the faults are done
     */
    public static Boundaries completed(Spec spec, Tryouts tryouts, Boundaries before, long budget,
            Heard heard) {
        List<Boundaries.Boundary> all = new ArrayList<>(before.cases());
        List<Fault> faults = Planting.of(spec, tryouts.program().outline());
        for (int i = 0; i < faults.size(); i++) {
            FaultRun run = new FaultRun(tryouts, cases(tryouts.program(), all), budget);
            FaultReport.Result result = run.result(faults.get(i));
            int number = all.size() + 1;
            result.example().ifPresent(example -> all.add(new Boundaries.Boundary(
                    Scribe.named("Notices a fault, case " + number, example),
                    List.of("notices " + result.words()))));
            heard.of(i + 1L, faults.size());
        }
        return new Boundaries(all);
    }

    private static List<Case> cases(Program program, List<Boundaries.Boundary> boundaries) {
        List<CaseSpec> specs = boundaries.stream().map(Boundaries.Boundary::spec).toList();
        return Cases.of(program, new CasesReading(specs, List.of())).cases();
    }

    private FaultReport.Result result(Fault fault) {
        Optional<Program> faulty = Checked.of(fault.spec(), List.of(), budget).program();
        if (faulty.isEmpty()) {
            return result(fault, FaultReport.Fate.REFUSED, Optional.empty(), Optional.empty());
        }
        Comparison comparison = Comparison.of(program, faulty.get());
        if (comparison.isSame() || ForNobody.isSame(comparison)) {
            return result(fault, FaultReport.Fate.SAME, Optional.empty(), Optional.empty());
        }
        Optional<String> by = cases.stream().filter(one -> CaseRun.of(faulty.get(), one).failure()
                .isPresent())
                .map(Case::name).findFirst();
        return by.isPresent() ? result(fault, FaultReport.Fate.NOTICED, by, Optional.empty())
                : unnoticed(fault, faulty.get(), comparison);
    }

    private static FaultReport.Result result(Fault fault, FaultReport.Fate fate, Optional<String> by,
            Optional<CaseSpec> example) {
        return new FaultReport.Result(fault.words(), fault.place(), fate, by, example);
    }

    private FaultReport.Result unnoticed(Fault fault, Program faulty, Comparison comparison) {
        Optional<CaseSpec> example = plays(comparison, faulty).flatMap(play -> telling(play, faulty).stream())
                .findFirst();
        return result(fault, example.isPresent() ? FaultReport.Fate.UNNOTICED : FaultReport.Fate.UNREACHED,
                Optional.empty(), example);
    }

    /** Events that may come to something else: where the two differ, and what either has edges at. */
    private Stream<Play> plays(Comparison comparison, Program faulty) {
        Retelling retelling = new Retelling(program, Scene.of(program));
        Stream<Play> shown = comparison.differences().stream().flatMap(each -> proof(each).stream())
                .flatMap(retelling::of);
        Stream<Play> own = tryouts.items().stream().flatMap(tryouts::plays);
        Stream<Play> rungs = new LadderPlays(program, faulty).plays();
        Stream<Play> other = Stream.of(faulty).map(Tryouts::of).flatMap(others -> others.items().stream()
                .flatMap(others::plays));
        return Stream.of(shown, rungs, own, other).flatMap(each -> each)
                .flatMap(play -> Stream.concat(Stream.of(play), unlogged(comparison, play)));
    }

    /** The same without a measure in the last session, where what that counts as may differ. */
    private Stream<Play> unlogged(Comparison comparison, Play play) {
        return comparison.differences().stream().flatMap(each -> measure(each).stream())
                .flatMap(name -> play.without(name).stream())
                .flatMap(each -> Stream.concat(Stream.of(each), new Persons(program.outline()).others(each)));
    }

    private static Optional<String> measure(Difference difference) {
        return difference.match(new Difference.Cases<>() {
            @Override
            public Optional<String> decided(Difference.Decided decided) {
                return Optional.empty();
            }

            @Override
            public Optional<String> changed(Difference.Changed changed) {
                return changed.part() == Part.MEASURE ? Optional.of(changed.name()) : Optional.empty();
            }

            @Override
            public Optional<String> unsettled(Difference.Unsettled unsettled) {
                return Optional.empty();
            }
        });
    }

    private static Optional<Proof> proof(Difference difference) {
        return difference.match(new Difference.Cases<>() {
            @Override
            public Optional<Proof> decided(Difference.Decided decided) {
                return decided.witness();
            }

            @Override
            public Optional<Proof> changed(Difference.Changed changed) {
                return Optional.empty();
            }

            @Override
            public Optional<Proof> unsettled(Difference.Unsettled unsettled) {
                return Optional.empty();
            }
        });
    }

    /** The events as a case that the program passes and the faulty one fails, if they make one. */
    private Optional<CaseSpec> telling(Play play, Program faulty) {
        if (play.run(program).failure().isPresent()) {
            return Optional.empty();
        }
        CaseSpec spec = new Scribe(program).spec("what comes of it", play);
        List<Case> read = Cases.of(program, new CasesReading(List.of(spec), List.of())).cases();
        boolean tells = read.stream().anyMatch(one -> CaseRun.of(program, one).failure().isEmpty()
                && CaseRun.of(faulty, one).failure().isPresent());
        return tells ? Optional.of(spec) : Optional.empty();
    }
}
