package rungwright.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.spec.CaseSpec;

/**
 * Reads the text of a cases file: who trains, what they log and what is expected of it, every scalar as it
 * stands, and all that is wrong with the form of it in one run.
 *
 * <p>Example: in a text whose line 4 is {@code "    expct: [hold]"} it finds {@code unknown-key} at 4:5,
 * "`expct` is not a key of a case".
 */
public final class CasesReader {
    private static final String BEGIN = "begin with `cases:` and a case below it, after `- `";

    private CasesReader() {
    }

    /** What came of reading a text; a byte-order mark before it is passed over. */
    public static CasesReading read(String text) {
        int characters = text.codePointCount(0, text.length());
        if (characters > Limits.CHARACTERS) {
            return refused(Finding.of(Code.TOO_LARGE, Place.START, "the text has " + characters
                    + " characters, and a cases file has at most " + Limits.CHARACTERS)
                    .withHint("split it into several files"));
        }
        Findings findings = new Findings();
        YamlText yaml = YamlText.read(text, findings);
        List<CaseSpec> cases = new ArrayList<>();
        if (yaml.root().isPresent()) {
            cases.addAll(cases(yaml.root().get(), findings));
        } else if (!yaml.broken()) {
            nothing(findings);
        }
        return new CasesReading(yaml.broken() ? List.of() : cases, findings.sorted());
    }

    private static List<CaseSpec> cases(Node root, Findings findings) {
        if (root.scalar().filter(Node.Scalar::isNothing).isPresent()) {
            nothing(findings);
            return List.of();
        }
        if (root.mapping().isEmpty() && !root.isLost()) {
            findings.add(Finding.of(Code.WRONG_KIND, root.place(),
                    "a cases file should be a map, but is " + root.kind()).withHint(BEGIN));
        }
        return root.mapping().map(map -> Fields.read(map, Shape.CASES, findings).required("cases", BEGIN)
                .map(new CaseReader(findings)::cases).orElse(List.of())).orElse(List.of());
    }

    private static void nothing(Findings findings) {
        findings.add(Finding.of(Code.MISSING_KEY, Place.START, "there is nothing in this file")
                .withHint(BEGIN));
    }

    /** What came of reading the bytes of a file, which are UTF-8 or nothing. */
    public static CasesReading readBytes(byte[] bytes) {
        Optional<Place> bad = Utf8.badPlace(bytes);
        return bad.map(place -> refused(Finding.of(Code.YAML_SYNTAX, place,
                        "the file is not UTF-8 from here on").withHint("save it again as UTF-8")))
                .orElseGet(() -> read(Utf8.text(bytes)));
    }

    private static CasesReading refused(Finding finding) {
        return new CasesReading(List.of(), List.of(finding));
    }
}
