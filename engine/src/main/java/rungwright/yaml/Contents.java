package rungwright.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Shown;
import rungwright.spec.Entry;
import rungwright.spec.Text;

/** What stands after a key, taken as the kind of thing that is meant there; anything else is reported. */
final class Contents {
    private static final Pattern BULLET = Pattern.compile("[-–—•·]");

    private final Findings findings;

    Contents(Findings findings) {
        this.findings = findings;
    }

    /** A single value with something in it. */
    Optional<Text> text(Node.Pair pair) {
        if (pair.value().scalar().isPresent()) {
            return pair.value().scalar().filter(scalar -> isFilled(pair, scalar)).map(Node.Scalar::text);
        }
        wrongKind(pair, "a single value", quoteHint(pair.value()));
        return Optional.empty();
    }

    /** A single value, or a list of at least one. */
    Optional<Entry> entry(Node.Pair pair) {
        if (pair.value().scalar().isPresent()) {
            return text(pair).map(text -> new Entry(pair.key().text(), List.of(text), false));
        }
        List<Text> texts = texts(pair, "a single value or a list");
        boolean isEmpty = pair.value().listing().map(list -> list.items().isEmpty()).orElse(false);
        if (isEmpty) {
            nothing(pair);
        }
        return texts.isEmpty() ? Optional.empty() : Optional.of(new Entry(pair.key().text(), texts, true));
    }

    /** The single values of a list; one that stands alone is reported and taken for a list of one. */
    List<Text> texts(Node.Pair pair) {
        if (pair.value().scalar().isEmpty()) {
            return texts(pair, "a list");
        }
        Optional<Text> alone = text(pair);
        alone.ifPresent(text -> findings.aside(wrong(pair.value(), Shown.quoted(pair.name()), "a list")
                .withHint(BULLET.matcher(text.value()).lookingAt()
                        ? "begin each item with `- `, a hyphen and a space"
                        : "put it on a line of its own below `" + pair.name() + ":`, after `- `")));
        return alone.stream().toList();
    }

    private List<Text> texts(Node.Pair pair, String wanted) {
        List<Text> texts = new ArrayList<>();
        for (Node item : items(pair, wanted)) {
            if (item.scalar().isEmpty()) {
                wrongKind(item, "an item of " + Shown.quoted(pair.name()), "a single value", quoteHint(item));
            } else if (item.scalar().get().isBlank()) {
                findings.add(Finding.of(Code.MISSING_KEY, item.place(),
                        "an item of " + Shown.quoted(pair.name()) + " is empty"));
            } else {
                item.scalar().map(Node.Scalar::text).ifPresent(texts::add);
            }
        }
        return texts;
    }

    private List<Node> items(Node.Pair pair, String wanted) {
        Optional<Node.Listing> list = pair.value().listing();
        if (list.isEmpty()) {
            wrongKind(pair, wanted, quoteHint(pair.value()));
            return List.of();
        }
        if (list.get().cut()) {
            findings.lost();
        }
        return list.get().items();
    }

    /** A map; {@code hint} is what to do where something else stands. */
    Optional<Node.Mapping> mapping(Node.Pair pair, String hint) {
        Optional<Node.Mapping> map = pair.value().mapping();
        if (map.isEmpty() && !isNothing(pair)) {
            wrongKind(pair, "a map", hint);
        }
        if (map.map(Node.Mapping::cut).orElse(false)) {
            findings.lost();
        }
        return map;
    }

    /** Whether nothing at all stands after a key; if so, it is reported. */
    boolean isNothing(Node.Pair pair) {
        boolean isNothing = pair.value().scalar().map(Node.Scalar::isNothing).orElse(false);
        if (isNothing) {
            nothing(pair);
        }
        return isNothing;
    }

    /** Reports that a key has nothing after it. */
    void nothing(Node.Pair pair) {
        findings.add(Finding.of(Code.MISSING_KEY, pair.key().place(),
                "nothing stands after " + Shown.quoted(pair.name())));
    }

    /** Reports that something else stands after a key than is meant. */
    void wrongKind(Node.Pair pair, String wanted, String hint) {
        wrongKind(pair.value(), Shown.quoted(pair.name()), wanted, hint);
    }

    /** Reports that {@code what} is of another kind than is meant, unless its trouble is known already. */
    void wrongKind(Node node, String what, String wanted, String hint) {
        if (node.isLost()) {
            findings.lost();
        } else {
            findings.add(wrong(node, what, wanted).withHint(hint));
        }
    }

    private static Finding wrong(Node node, String what, String wanted) {
        return Finding.of(Code.WRONG_KIND, node.place(),
                what + " should be " + wanted + ", but is " + node.kind());
    }

    private boolean isFilled(Node.Pair pair, Node.Scalar scalar) {
        if (scalar.isBlank()) {
            nothing(pair);
        }
        return !scalar.isBlank();
    }

    private static String quoteHint(Node node) {
        return node.mapping().isPresent() ? "a text that has `: ` in it stands in quotes" : "";
    }
}
