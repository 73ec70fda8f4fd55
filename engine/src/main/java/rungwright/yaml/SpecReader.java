package rungwright.yaml;

import java.util.List;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.spec.Spec;

/**
 * Reads the text of a spec: the structure that the spec language gives it, every scalar as it stands, and all
 * that is wrong with either in one run. No text makes it fail; what cannot be read is a finding.
 *
 * <p>Example: in a text whose line 12 is {@code "    advnce: { when: { reps: at least 12 } }"} it finds
 * {@code unknown-key} at 12:5, "`advnce` is not a key of a stage".
 */
public final class SpecReader {
    private SpecReader() {
    }

    /** What came of reading a text; a byte-order mark before it is passed over. */
    public static Reading read(String text) {
        int characters = text.codePointCount(0, text.length());
        if (characters > Limits.CHARACTERS) {
            return refused(Finding.of(Code.TOO_LARGE, Place.START, "the text has " + characters
                    + " characters, and a spec has at most " + Limits.CHARACTERS));
        }
        Findings findings = new Findings();
        YamlText yaml = YamlText.read(text, findings);
        Optional<Spec> spec = yaml.root().isPresent() || yaml.broken()
                ? yaml.root().flatMap(root -> spec(root, findings))
                : nothing(findings);
        return new Reading(spec.filter(read -> !yaml.broken()), findings.sorted());
    }

    private static Optional<Spec> spec(Node root, Findings findings) {
        if (root.scalar().filter(Node.Scalar::isNothing).isPresent()) {
            return nothing(findings);
        }
        if (root.mapping().isEmpty() && !root.isLost()) {
            findings.add(Finding.of(Code.WRONG_KIND, root.place(),
                    "a spec should be a map, but is " + root.kind())
                    .withHint("begin with `program: ` and a name, and put a space after every `:`"));
        }
        return root.mapping().map(map -> SpecParts.read(map, findings));
    }

    private static Optional<Spec> nothing(Findings findings) {
        findings.add(Finding.of(Code.MISSING_KEY, Place.START, "there is nothing in this spec")
                .withHint("begin with `program: ` and a name"));
        return Optional.empty();
    }

    /** What came of reading the bytes of a file, which are UTF-8 or nothing. */
    public static Reading readBytes(byte[] bytes) {
        return Utf8.badPlace(bytes)
                .map(place -> refused(Finding.of(Code.YAML_SYNTAX, place,
                        "the file is not UTF-8 from here on").withHint("save it again as UTF-8")))
                .orElseGet(() -> read(Utf8.text(bytes)));
    }

    private static Reading refused(Finding finding) {
        return new Reading(Optional.empty(), List.of(finding));
    }
}
