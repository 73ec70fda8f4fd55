package rungwright.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Shown;

/** The parts of a section that the coach names: measures, facts, ladders, assessments, stages. */
final class Names {
    private final Findings findings;
    private final Contents contents;

    Names(Findings findings) {
        this.findings = findings;
        this.contents = new Contents(findings);
    }

    /**
     * A kind of section.
     *
     * @param what what its parts are: {@code measures}
     * @param most how many there may be
     * @param example what one looks like: {@code reps: { values: 0 to 60 }}
     */
    record Section(String what, int most, String example) {
    }

    /** A part with its name and its keys. */
    record Part(Node.Scalar name, Node.Mapping map) {
    }

    /**
     * The named parts of a section. One that is no map is reported and kept with its name alone, so that what
     * speaks of it still finds it; those over the limit are reported and left out.
     */
    List<Part> parts(Node.Pair pair, Section section) {
        String hint = "write `" + section.example() + "`";
        List<Part> parts = new ArrayList<>();
        List<Node.Pair> named = contents.mapping(pair, hint)
                .map(map -> once(map.pairs(), findings)).orElse(List.of());
        for (Node.Pair one : named.subList(0, Math.min(section.most(), named.size()))) {
            checkName(one.name(), one.key().place(), findings);
            Node.Mapping nothing = new Node.Mapping(one.key().place(), List.of(), false, true);
            parts.add(new Part(one.key(), contents.mapping(one, hint).orElse(nothing)));
        }
        if (named.size() > section.most()) {
            findings.add(Finding.of(Code.TOO_LARGE, named.get(section.most()).key().place(),
                    "there are more than " + section.most() + " " + section.what()
                            + ", and the rest is not read"));
        }
        return parts;
    }

    /** Reports a name that no list or table has room for, or that runs over lines. */
    static void checkName(String name, Place place, Findings findings) {
        if (name.codePointCount(0, name.length()) > Limits.NAME) {
            findings.add(Finding.of(Code.TOO_LARGE, place,
                    "the name " + Shown.quoted(name) + " is longer than " + Limits.NAME + " characters"));
        } else if (name.indexOf('\n') >= 0 || name.indexOf('\t') >= 0 || !name.equals(name.strip())) {
            findings.add(Finding.of(Code.BAD_VALUE, place, "the name " + Shown.quoted(name)
                    + " begins or ends with a space, or has a tab or a line end in it"));
        }
    }

    /** The pairs without those whose key stood before; these are reported at the later key. */
    static List<Node.Pair> once(List<Node.Pair> pairs, Findings findings) {
        Map<String, Node.Pair> first = new LinkedHashMap<>();
        for (Node.Pair pair : pairs) {
            Node.Pair earlier = first.putIfAbsent(pair.name(), pair);
            if (earlier != null) {
                findings.add(Finding.of(Code.DUPLICATE_KEY, pair.key().place(),
                        Shown.quoted(pair.name()) + " stands here for the second time")
                        .withHint(twice(pair))
                        .withRelated(earlier.key().place(), "it stands here first"));
            }
        }
        return List.copyOf(first.values());
    }

    /** A stage may have several rules of a kind, which are easily written as a second key. */
    private static String twice(Node.Pair pair) {
        boolean isRule = StageReader.kind(pair.name()).isPresent() && isRules(pair.value());
        return isRule ? "under one `" + pair.name() + ":`, give each rule a line of its own after `- `:"
                + " `- { when: … }`"
                : "put both in one, or rename one of them";
    }

    private static boolean isRules(Node value) {
        return value.mapping().isPresent() || WhenReader.isOtherwise(value) || value.listing().stream()
                .flatMap(list -> list.items().stream()).anyMatch(item -> item.mapping().isPresent());
    }
}
