package rungwright.yaml;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.spec.Entry;
import rungwright.spec.Text;

/** The keys of one map that has a shape: each at most once, none that means nothing there. */
final class Fields {
    private final Node.Mapping map;
    private final Shape shape;
    private final Findings findings;
    private final Contents contents;
    private final Map<String, Node.Pair> pairs = new LinkedHashMap<>();

    private Fields(Node.Mapping map, Shape shape, Findings findings) {
        this.map = map;
        this.shape = shape;
        this.findings = findings;
        this.contents = new Contents(findings);
    }

    /** Reads the keys of a map and reports those that are unknown or stand twice. */
    static Fields read(Node.Mapping map, Shape shape, Findings findings) {
        Fields fields = new Fields(map, shape, findings);
        List<Node.Pair> known = UnknownKeys.sortOut(map, shape, findings);
        for (Node.Pair pair : Names.once(known, findings)) {
            fields.pairs.put(pair.name(), pair);
        }
        return fields;
    }

    /** Where the map starts. */
    Place place() {
        return map.place();
    }

    boolean has(String key) {
        return pairs.containsKey(key);
    }

    Optional<Node.Pair> pair(String key) {
        return Optional.ofNullable(pairs.get(key));
    }

    /** The pairs that have a meaning here, in the order of the text. */
    List<Node.Pair> inOrder() {
        return List.copyOf(pairs.values());
    }

    /** The single value of a key, if the key is there and has one. */
    Optional<Text> text(String key) {
        return pair(key).flatMap(contents::text);
    }

    /** The single value or list of a key, if the key is there and has one. */
    Optional<Entry> entry(String key) {
        return pair(key).flatMap(contents::entry);
    }

    /** The pair of a key that must be there; reported where it is not. */
    Optional<Node.Pair> required(String key, String hint) {
        if (!has(key)) {
            missing("`" + key + "` is missing from " + shape.owner(), hint);
        }
        return pair(key);
    }

    /** Reports something missing from the map, unless a part of the map could not be read. */
    void missing(String message, String hint) {
        if (map.cut()) {
            findings.lost();
        } else {
            findings.add(Finding.of(Code.MISSING_KEY, map.place(), message).withHint(hint));
        }
    }

    /** Reports two keys of which a map has only one, at the later of them. */
    void either(String one, String other) {
        if (has(one) && has(other)) {
            boolean oneIsFirst = pairs.get(one).key().place().compareTo(pairs.get(other).key().place()) < 0;
            Node.Scalar first = pairs.get(oneIsFirst ? one : other).key();
            Node.Scalar second = pairs.get(oneIsFirst ? other : one).key();
            findings.add(Finding.of(Code.BAD_VALUE, second.place(), shape.owner() + " has "
                    + Shown.quoted(first.value()) + " or " + Shown.quoted(second.value()) + ", not both")
                    .withHint("leave one of them out")
                    .withRelated(first.place(), "the other one stands here"));
        }
    }
}
