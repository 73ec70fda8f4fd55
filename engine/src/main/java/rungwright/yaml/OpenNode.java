package rungwright.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Shown;

/** A map or list while its parts come in; of a map, keys and values by turns. */
final class OpenNode {
    private static final String MERGE = "<<";
    private static final Pattern BRACKET = Pattern.compile("([^\\s{\\[,:#][^{\\[,:#]*):[{\\[]");

    private final Place place;
    private final boolean isMap;
    private final boolean isFlow;
    private final Findings findings;
    private final List<Node> parts = new ArrayList<>();
    private boolean cut;
    private boolean full;

    OpenNode(Place place, boolean isMap, boolean isFlow, Findings findings) {
        this.place = place;
        this.isMap = isMap;
        this.isFlow = isFlow;
        this.findings = findings;
    }

    Place place() {
        return place;
    }

    /** Whether no more parts are taken; the first one over the limit is reported. */
    boolean isFull() {
        return full;
    }

    void add(Node part) {
        if (parts.size() < Limits.NODES * (isMap ? 2 : 1)) {
            parts.add(part);
        } else if (!full) {
            full = true;
            cut = true;
            findings.add(Finding.of(Code.TOO_LARGE, part.place(), "there are more than " + Limits.NODES
                    + (isMap ? " keys in one map" : " items in one list") + ", and the rest is not read"));
        }
    }

    boolean isFlow() {
        return isFlow;
    }

    /**
     * Says that nothing more comes because of a mistake in some line; a key whose value did not come, or
     * stands in that line or below, is taken out.
     */
    void breakOff(int line) {
        if (isMap && parts.size() % 2 == 1) {
            parts.remove(parts.size() - 1);
        } else if (isMap && !parts.isEmpty() && isDoubtful(parts.get(parts.size() - 1), line)) {
            parts.subList(parts.size() - 2, parts.size()).clear();
        }
        cut = true;
    }

    private static boolean isDoubtful(Node value, int line) {
        return value.place().line() >= line || value.scalar().filter(Node.Scalar::isNothing).isPresent();
    }

    /** Says that parts are missing. */
    OpenNode cut() {
        cut = true;
        return this;
    }

    /** The finished node; keys that are no names are reported and left out. */
    Node close() {
        if (!isMap) {
            return new Node.Listing(place, parts, cut);
        }
        List<Node.Pair> pairs = new ArrayList<>();
        for (int i = 0; i < parts.size(); i += 2) {
            Node value = i + 1 < parts.size() ? parts.get(i + 1) : new Node.Lost(parts.get(i).place());
            Optional<Node.Scalar> key = key(parts.get(i));
            cut |= key.isEmpty();
            key.ifPresent(name -> pairs.add(new Node.Pair(name, value)));
        }
        return new Node.Mapping(place, pairs, isFlow, cut);
    }

    private Optional<Node.Scalar> key(Node part) {
        Optional<Finding> wrong = part.isLost() ? Optional.empty()
                : wrong(part).or(() -> part.scalar().flatMap(OpenNode::swallowedBracket));
        wrong.ifPresent(findings::add);
        return wrong.isPresent() ? Optional.empty() : part.scalar();
    }

    /** A key that ran into the bracket after its colon: {@code body mass:{ values}. */
    private static Optional<Finding> swallowedBracket(Node.Scalar key) {
        Matcher bracket = BRACKET.matcher(key.value());
        if (key.style() != Node.Style.PLAIN || !bracket.lookingAt()) {
            return Optional.empty();
        }
        String name = bracket.group(1);
        int colon = key.place().column() + name.codePointCount(0, name.length());
        return Optional.of(Finding.of(Code.YAML_SYNTAX, new Place(key.place().line(), colon + 1),
                "a space is missing after the colon of " + Shown.quoted(name))
                .withHint(UnknownKeys.withSpace(key.value(), name.length())));
    }

    private static Optional<Finding> wrong(Node part) {
        Optional<Node.Scalar> name = part.scalar();
        if (name.isEmpty()) {
            return Optional.of(Finding.of(Code.YAML_FEATURE, part.place(),
                    "a key here is " + part.kind() + ", and keys are names")
                    .withHint("leave out the brackets around the key"));
        }
        if (name.get().isBlank()) {
            return Optional.of(Finding.of(Code.MISSING_KEY, part.place(), "no key stands before this `:`"));
        }
        if (name.get().style() == Node.Style.PLAIN && name.get().value().equals(MERGE)) {
            return Optional.of(Finding.of(Code.YAML_FEATURE, part.place(),
                    "`<<` merges another map into this one, which specs do not use")
                    .withHint("write the keys out here"));
        }
        return Optional.empty();
    }
}
