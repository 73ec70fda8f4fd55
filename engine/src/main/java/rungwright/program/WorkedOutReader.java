package rungwright.program;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.measure.BuiltIn;
import rungwright.spec.MeasureSpec;
import rungwright.spec.RuleKind;
import rungwright.spec.Text;

/** Reads the measures that are worked out, each after those that its formula uses. */
final class WorkedOutReader {
    private final Map<String, MeasureSpec> specs = new LinkedHashMap<>();
    private final Map<String, Optional<WorkedPart>> read = new LinkedHashMap<>();
    private final Set<String> reading = new LinkedHashSet<>();
    private final Vocabulary names;
    private final MissingTakes missing;
    private final Troubles troubles;
    private final Steadiness steadiness;
    private final Divisors divisors;
    private final List<String> longestFirst;

    WorkedOutReader(List<MeasureSpec> specs, Vocabulary names, MissingTakes missing,
            Steadiness steadiness, Troubles troubles) {
        this.steadiness = steadiness;
        this.divisors = new Divisors(troubles);
        specs.forEach(spec -> this.specs.putIfAbsent(Tidy.of(spec.name()), spec));
        this.names = names;
        this.missing = missing;
        this.troubles = troubles;
        List<String> known = Stream.concat(names.names(RuleKind.HOLD).stream(), this.specs.keySet().stream())
                .distinct().toList();
        Stream<String> builtIns = Stream.of(BuiltIn.values()).map(BuiltIn::word);
        this.longestFirst = Stream.of(known.stream(), builtIns, known.stream()
                .map(name -> "previous " + name))
                .flatMap(each -> each).distinct()
                .sorted(Comparator.comparingInt(String::length).reversed()).toList();
    }

    /** All that could be read, in the order of the text. */
    List<WorkedPart> all() {
        List<WorkedPart> all = new ArrayList<>();
        specs.forEach((name, spec) -> part(name, spec.name().place()).ifPresent(all::add));
        return all;
    }

    /** The names that a formula may hold, the longest first. */
    List<String> longestFirst() {
        return longestFirst;
    }

    /** Whether a measure or fact has the name. */
    boolean isName(String name) {
        return isWorkedOut(name) || names.isLost(name, RuleKind.HOLD)
                || names.subject(name, RuleKind.HOLD).isPresent();
    }

    /** Whether a worked-out measure has the name. */
    boolean isWorkedOut(String name) {
        return specs.containsKey(name);
    }

    /** The worked-out measure of a name, or nothing where it could not be read. */
    Optional<WorkedPart> part(String name, Place place) {
        MeasureSpec spec = specs.get(name);
        if (spec == null) {
            return Optional.empty();
        }
        if (!read.containsKey(name)) {
            if (!reading.add(name)) {
                circle(name, place);
                return Optional.empty();
            }
            Optional<WorkedPart> part = read(spec);
            reading.remove(name);
            read.putIfAbsent(name, part);
        }
        return read.get(name);
    }

    private void circle(String name, Place place) {
        List<String> way = new ArrayList<>(reading);
        way = way.subList(way.indexOf(name), way.size());
        String steps = String.join(" from ", way.stream().map(Shown::quoted).toList());
        troubles.add(Finding.of(Code.BAD_VALUE, place, "the formulas go in a circle: " + steps + " from "
                + Shown.quoted(name)).withHint("work one of them out from what is logged"));
        way.forEach(each -> read.put(each, Optional.empty()));
    }

    private Optional<WorkedPart> read(MeasureSpec spec) {
        Text from = spec.from().orElseThrow();
        FormulaNames used = new FormulaNames(this, names, missing, troubles);
        Optional<FormulaPart> part = FormulaParser.read(Tidy.of(from), used, divisors, from.place(),
                troubles);
        return part.flatMap(formula -> new WorkedOutShape(spec, troubles, steadiness).read(formula, used));
    }

}
