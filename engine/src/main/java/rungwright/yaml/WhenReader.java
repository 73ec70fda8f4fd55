package rungwright.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.spec.ConditionSpec;
import rungwright.spec.CriterionSpec;
import rungwright.spec.Entry;

/** Reads what stands after {@code when}: a map, a list of maps, or {@code otherwise}. */
final class WhenReader {
    static final String OTHERWISE = "otherwise";

    private static final Pattern PROSE =
            Pattern.compile("(\\S.*?) ((?:at least|at most|over|under|not) \\S.*)");

    /** Prose longer than this is not taken apart. */
    private static final int MOST_PROSE = 200;

    // Where the next criterion begins, and not where a phrase goes on.
    private static final String NEXT = "(?=\\S[^,]*? (?:at least|at most|over|under|not) )";
    private static final Pattern AND = Pattern.compile("(?:,| and) +" + NEXT);
    private static final Pattern OR = Pattern.compile(",? or +" + NEXT);

    private final Findings findings;
    private final Contents contents;

    WhenReader(Findings findings) {
        this.findings = findings;
        this.contents = new Contents(findings);
    }

    /**
     * The condition after {@code when}. Only the condition itself says whether it is whole.
     *
     * @param noOtherwise why {@code otherwise} may not stand here, or empty where it may
     */
    ConditionSpec read(Node.Pair when, String noOtherwise) {
        int mark = findings.mark();
        boolean otherwise = isOtherwise(when.value());
        List<ConditionSpec.AllOf> anyOf = new ArrayList<>();
        if (otherwise) {
            refuseOtherwise(when.value().place(), noOtherwise);
        } else {
            when.value().mapping()
                    .ifPresentOrElse(map -> allOf(map).ifPresent(anyOf::add), () -> anyOf(when, anyOf));
        }
        boolean whole = findings.settle(mark);
        return new ConditionSpec(when.value().place(), otherwise && whole, anyOf, whole);
    }

    /** Whether a node is the word {@code otherwise}. */
    static boolean isOtherwise(Node node) {
        return node.scalar().map(scalar -> scalar.value().equals(OTHERWISE)).orElse(false);
    }

    /** Reports an {@code otherwise} where there is a reason against it. */
    void refuseOtherwise(Place place, String reason) {
        if (!reason.isEmpty()) {
            findings.add(Finding.of(Code.BAD_VALUE, place, "`otherwise` does not go here: " + reason)
                    .withHint("say in `when` which sessions are meant"));
        }
    }

    private void anyOf(Node.Pair when, List<ConditionSpec.AllOf> anyOf) {
        Optional<Node.Listing> list = when.value().listing();
        if (list.isEmpty()) {
            reportKind(when);
        } else if (list.get().items().isEmpty()) {
            contents.nothing(when);
        } else {
            if (list.get().cut()) {
                findings.lost();
            }
            list.get().items().forEach(item -> alternative(item).ifPresent(anyOf::add));
        }
    }

    private void reportKind(Node.Pair when) {
        if (!contents.isNothing(when)) {
            contents.wrongKind(when, "a map, a list of maps, or `otherwise`", hint(when.value()));
        }
    }

    private Optional<ConditionSpec.AllOf> alternative(Node item) {
        if (item.mapping().isEmpty()) {
            contents.wrongKind(item, "an item of `when`", "a map", hint(item));
        }
        return item.mapping().flatMap(this::allOf);
    }

    private static String hint(Node node) {
        String written = node.scalar().map(Node.Scalar::value).orElse("").strip();
        Matcher prose = PROSE.matcher(written);
        if (Suggest.closest(written, List.of(OTHERWISE)).isPresent()) {
            return "write `otherwise` as the only thing after `when`";
        }
        return written.length() <= MOST_PROSE && prose.matches()
                ? "write `" + Shown.line(maps(written)) + "`"
                : "write `{ measure: phrase }`, such as `{ reps: at least 12 }`";
    }

    /** Prose as maps: of {@code reps at least 8 or pain under 3} there are two. */
    private static String maps(String written) {
        List<String> any = Stream.of(OR.split(written)).map(all -> "{ " + Stream.of(AND.split(all))
                .map(one -> PROSE.matcher(one).replaceFirst("$1: $2"))
                .collect(Collectors.joining(", ")) + " }").toList();
        return any.size() == 1 ? any.get(0) : "[ " + String.join(", ", any) + " ]";
    }

    private Optional<ConditionSpec.AllOf> allOf(Node.Mapping map) {
        List<Node.Pair> pairs = Names.once(map.pairs(), findings);
        if (map.cut()) {
            findings.lost();
        } else if (pairs.isEmpty()) {
            findings.add(Finding.of(Code.MISSING_KEY, map.place(), "no criterion stands in this map")
                    .withHint("write `{ measure: phrase }`, such as `{ reps: at least 12 }`"));
        }
        List<CriterionSpec> criteria = new ArrayList<>();
        for (Node.Pair pair : pairs) {
            criterion(pair, map).map(CriterionSpec::new).ifPresent(criteria::add);
        }
        return criteria.isEmpty()
                ? Optional.empty()
                : Optional.of(new ConditionSpec.AllOf(map.place(), criteria));
    }

    private Optional<Entry> criterion(Node.Pair pair, Node.Mapping map) {
        List<Finding> signs = phrases(pair.value()).stream()
                .flatMap(scalar -> Operators.inPhrase(phrase(scalar), scalar.place()).stream()).toList();
        if (!signs.isEmpty()) {
            signs.forEach(findings::add);
            return Optional.empty();
        }
        if (pair.value().scalar().map(Node.Scalar::isNothing).orElse(false)) {
            findings.add(Finding.of(Code.MISSING_KEY, pair.key().place(),
                    "nothing stands after " + Shown.quoted(pair.name())).withHint(hint(pair, map)));
            return Optional.empty();
        }
        return contents.entry(pair);
    }

    /**
     * A block scalar with nothing in it is the sign {@code >} and a number: {@code > 5} never ends up here.
     */
    private static String phrase(Node.Scalar scalar) {
        return scalar.style() == Node.Style.BLOCK && scalar.isBlank() ? scalar.written() : scalar.value();
    }

    private static List<Node.Scalar> phrases(Node value) {
        List<Node> items = value.listing().map(Node.Listing::items).orElse(List.of(value));
        return items.stream().flatMap(item -> item.scalar().stream()).toList();
    }

    /** What to do about a key with nothing after it. */
    private static String hint(Node.Pair pair, Node.Mapping map) {
        String key = pair.name();
        int colon = key.indexOf(':');
        if (colon > 0 && colon < key.length() - 1) {
            return UnknownKeys.withSpace(key, colon);
        }
        Matcher prose = PROSE.matcher(key);
        if (prose.matches()) {
            return "write `" + Shown.text(prose.group(1) + ": " + prose.group(2)) + "`";
        }
        int index = map.pairs().indexOf(pair);
        Optional<Node.Pair> before = index > 0 ? Optional.of(map.pairs().get(index - 1)) : Optional.empty();
        return before.flatMap(number -> DecimalComma.joined(number, pair)
                        .map(joined -> DecimalComma.hint(number.name(), joined)))
                .orElse(map.isFlow() ? "to allow several values write them as a list: `reps: [5, 6]`" : "");
    }
}
