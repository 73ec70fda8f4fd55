package rungwright.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;

/**
 * Keys that mean nothing where they stand, and what was probably meant. A key that is a slip away from one
 * that is not there is read as that one, so that one slip is one finding.
 */
final class UnknownKeys {
    /** Keys whose value is text for people, where a comma may stand between digits. */
    private static final Set<String> PROSE = Set.of("ask", "say", "name", "exercise", "cues");

    /** Keys whose value may be a list of names. */
    private static final Set<String> LISTS = Set.of("rungs", "values");

    private final Node.Mapping map;
    private final Shape shape;
    private final Findings findings;
    private final List<Node.Pair> known = new ArrayList<>();

    private UnknownKeys(Node.Mapping map, Shape shape, Findings findings) {
        this.map = map;
        this.shape = shape;
        this.findings = findings;
    }

    /** The pairs of a map whose keys mean something in its shape; all others are reported. */
    static List<Node.Pair> sortOut(Node.Mapping map, Shape shape, Findings findings) {
        UnknownKeys keys = new UnknownKeys(map, shape, findings);
        int next = 0;
        while (next < map.pairs().size()) {
            next = keys.take(next);
        }
        return keys.known;
    }

    /** Takes or reports the key at {@code index}; gives the index of the next one to look at. */
    private int take(int index) {
        Node.Pair pair = map.pairs().get(index);
        if (shape.keys().contains(pair.name())) {
            known.add(pair);
            return index + 1;
        }
        int last = lastOfTornText(index);
        Finding finding = Finding.of(Code.UNKNOWN_KEY, pair.key().place(),
                Shown.quoted(pair.name()) + " is not a key of " + shape.owner());
        if (shape.misplaced().containsKey(pair.name())) {
            findings.aside(finding.withHint(shape.misplaced().get(pair.name())));
        } else if (last >= index) {
            findings.aside(finding.withHint(torn(index, last)));
        } else {
            reportAndGuess(pair, finding);
        }
        return Math.max(index, last) + 1;
    }

    /** Reports a key and, where it is close to one that is not there, reads it as that one. */
    private void reportAndGuess(Node.Pair pair, Finding finding) {
        Optional<String> close = Suggest.closest(pair.name(), shape.keys());
        Finding hinted = finding.withHint(missingSpace(pair).or(() -> strayStage(pair, close))
                .orElseGet(() -> suggestion(close)));
        if (close.filter(this::isFree).isPresent()) {
            known.add(pair.as(close.get()));
            findings.aside(hinted);
        } else {
            findings.add(hinted);
        }
    }

    private boolean isFree(String key) {
        return Stream.concat(known.stream(), map.pairs().stream()).noneMatch(pair -> pair.name().equals(key));
    }

    private String torn(int index, int last) {
        Node.Pair before = map.pairs().get(index - 1);
        return Optional.of(before).filter(pair -> !PROSE.contains(pair.name()))
                .flatMap(pair -> DecimalComma.joined(pair, map.pairs().get(index)))
                .map(number -> joinNumber(before, number))
                .orElseGet(() -> isList(before) ? list(index, last) : tornText(index, last));
    }

    private boolean isList(Node.Pair pair) {
        return LISTS.contains(pair.name()) && !known.isEmpty() && known.get(known.size() - 1).equals(pair);
    }

    /** Reads on with the list that was meant; gives the hint to write it. */
    private String list(int index, int last) {
        Node.Pair before = map.pairs().get(index - 1);
        List<Node> items = new ArrayList<>(List.of(before.value()));
        map.pairs().subList(index, last + 1).forEach(piece -> items.add(piece.key()));
        known.set(known.size() - 1, new Node.Pair(before.key(),
                new Node.Listing(before.value().place(), items, false)));
        return "write a list in brackets: `" + before.name() + ": [" + items.stream()
                .flatMap(item -> item.scalar().stream()).map(item -> Shown.line(item.value()))
                .collect(Collectors.joining(", ")) + "]`";
    }

    /** Reads on with the number that was meant; gives the hint to write it. */
    private String joinNumber(Node.Pair before, String joined) {
        int last = known.size() - 1;
        if (last >= 0 && known.get(last).equals(before)) {
            Node.Scalar meant = new Node.Scalar(before.value().place(), joined, Node.Style.PLAIN, joined);
            known.set(last, new Node.Pair(before.key(), meant));
        }
        return DecimalComma.hint(before.name(), joined);
    }

    /**
     * The last of the keys that are pieces of the text before them: in {@code { say: Rest, then go on }} the
     * key {@code then go on} has no value. Under {@code index} where there is no such text.
     */
    private int lastOfTornText(int index) {
        boolean afterText = map.isFlow() && index > 0 && map.pairs().get(index - 1).value().scalar()
                .filter(scalar -> scalar.style() == Node.Style.PLAIN && !scalar.isBlank()).isPresent();
        int last = index - 1;
        while (afterText && last + 1 < map.pairs().size() && isPiece(map.pairs().get(last + 1))) {
            last++;
        }
        return last;
    }

    private boolean isPiece(Node.Pair pair) {
        return !shape.keys().contains(pair.name()) && !pair.name().contains(":")
                && pair.value().scalar().map(Node.Scalar::isNothing).orElse(false);
    }

    private String tornText(int index, int last) {
        Node.Pair start = map.pairs().get(index - 1);
        StringBuilder text = new StringBuilder(start.value().scalar().map(Node.Scalar::value).orElse(""));
        map.pairs().subList(index, last + 1).forEach(piece -> text.append(", ").append(piece.name()));
        return "inside { } a text with a comma stands in quotes: `" + Shown.text(start.name()) + ": "
                + Quoting.quoted(Shown.line(text.toString())) + "`";
    }

    /** A stage that begins too far to the left, among the sections, or to the right, in another stage. */
    private Optional<String> strayStage(Node.Pair pair, Optional<String> close) {
        boolean below = shape == Shape.SPEC && pair.value().mapping().filter(map -> map.pairs().stream()
                .anyMatch(key -> Shape.STAGE.keys().contains(key.name()))).isPresent();
        boolean beside = shape == Shape.STAGE && !map.isFlow() && pair.value().scalar()
                .filter(Node.Scalar::isNothing).isPresent();
        return close.isPresent() || !below && !beside ? Optional.empty()
                : Optional.of("where it is a stage, begin it in the column in which the other stages begin");
    }

    private Optional<String> missingSpace(Node.Pair pair) {
        int colon = pair.name().indexOf(':');
        return colon > 0 && shape.keys().contains(pair.name().substring(0, colon))
                ? Optional.of(withSpace(pair.name(), colon))
                : Optional.empty();
    }

    /** A hint for a key that ran into its value. */
    static String withSpace(String key, int colon) {
        String apart = key.substring(0, colon) + ": " + key.substring(colon + 1);
        return "put a space after the colon: " + Shown.quoted(apart);
    }

    private String suggestion(Optional<String> close) {
        return close.map(key -> "did you mean `" + key + "`? ").orElse("")
                + "keys of " + shape.owner() + ": " + shape.listed();
    }
}
