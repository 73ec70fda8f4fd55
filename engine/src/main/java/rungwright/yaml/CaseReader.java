package rungwright.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.spec.CaseSpec;
import rungwright.spec.GivenSpec;
import rungwright.spec.SessionSpec;
import rungwright.spec.Text;

/** Reads cases one after the other; one of which something could not be read is left out, and reported. */
final class CaseReader {
    private static final String A_CASE = "write `- { name: …, sessions: [ … ], expect: [ … ] }`";
    private static final String A_SESSION = "write `- { reps: [9, 7], pain: 1 }`";

    private final Findings findings;
    private final Contents contents;

    CaseReader(Findings findings) {
        this.findings = findings;
        this.contents = new Contents(findings);
    }

    /** The cases of the list {@code cases}. */
    List<CaseSpec> cases(Node.Pair pair) {
        List<CaseSpec> cases = new ArrayList<>();
        for (Node.Mapping map : maps(pair, "a list of cases", "a case", A_CASE)) {
            oneCase(map).ifPresent(cases::add);
        }
        if (pair.value().listing().filter(list -> list.items().isEmpty()).isPresent()) {
            contents.nothing(pair);
        }
        return cases;
    }

    /** The maps of a list; anything else in it is reported. */
    private List<Node.Mapping> maps(Node.Pair pair, String wanted, String item, String hint) {
        List<Node.Mapping> maps = new ArrayList<>();
        Optional<Node.Listing> list = pair.value().listing();
        if (list.isEmpty()) {
            if (!contents.isNothing(pair)) {
                contents.wrongKind(pair, wanted, hint);
            }
            return maps;
        }
        if (list.get().cut()) {
            findings.lost();
        }
        for (Node node : list.get().items()) {
            if (node.mapping().isEmpty()) {
                contents.wrongKind(node, "an item of `" + pair.name() + "`", item, hint);
            }
            node.mapping().ifPresent(maps::add);
        }
        return maps;
    }

    private Optional<CaseSpec> oneCase(Node.Mapping map) {
        int mark = findings.mark();
        if (map.cut()) {
            findings.lost();
        }
        Fields fields = Fields.read(map, Shape.CASE, findings);
        Optional<Text> name = fields.required("name", "name it: `name: The first week`")
                .flatMap(contents::text);
        name.ifPresent(text -> Names.checkName(text.value(), text.place(), findings));
        List<GivenSpec> trainee = fields.pair("trainee")
                .flatMap(pair -> contents.mapping(pair, "write `trainee: { body mass: 70 kg }`"))
                .map(this::given).orElse(List.of());
        List<SessionSpec> sessions = fields.pair("sessions")
                .map(pair -> maps(pair, "a list of sessions", "a session", A_SESSION)).orElse(List.of())
                .stream().map(this::session).toList();
        Optional<CaseSpec.ExpectSpec> expect = fields.pair("expect").map(this::expect);
        if (!fields.has("expect") && !fields.has("ends")) {
            fields.missing("nothing is expected of this case",
                    "write `expect: [hold]`, an item a session, or `ends: stage …`");
        }
        Optional<CaseSpec> read = name.map(text -> new CaseSpec(map.place(), text, fields.text("enrolled"),
                trainee, fields.text("start"), sessions, expect, fields.text("ends")));
        boolean whole = findings.settle(mark);
        return read.filter(spec -> whole);
    }

    private CaseSpec.ExpectSpec expect(Node.Pair pair) {
        boolean isEmpty = pair.value().listing().filter(list -> list.items().isEmpty()).isPresent();
        return new CaseSpec.ExpectSpec(pair.key().place(), isEmpty ? List.of() : contents.texts(pair));
    }

    private SessionSpec session(Node.Mapping map) {
        Optional<Text> date = Optional.empty();
        Optional<Text> event = Optional.empty();
        List<Node.Pair> others = new ArrayList<>();
        for (Node.Pair pair : Names.once(map.pairs(), findings)) {
            switch (pair.name()) {
                case "date" -> date = contents.text(pair);
                case "event" -> event = contents.text(pair);
                default -> others.add(pair);
            }
        }
        if (map.cut()) {
            findings.lost();
        }
        return new SessionSpec(map.place(), date, event, others.stream().map(this::given)
                .flatMap(Optional::stream).toList());
    }

    private List<GivenSpec> given(Node.Mapping map) {
        return Names.once(map.pairs(), findings).stream().map(this::given).flatMap(Optional::stream).toList();
    }

    /** What is given for a name; quotes with nothing in them stand for no reading. */
    private Optional<GivenSpec> given(Node.Pair pair) {
        if (pair.value().listing().isPresent()) {
            return Optional.of(new GivenSpec(pair.key().text(), items(pair, pair.value().listing().get()),
                    true));
        }
        Optional<Node.Scalar> scalar = pair.value().scalar();
        if (scalar.isEmpty()) {
            contents.wrongKind(pair, "a single value or a list", "write `" + pair.name() + ": [9, 7]`");
            return Optional.empty();
        }
        return contents.isNothing(pair) ? Optional.empty()
                : scalar.map(one -> new GivenSpec(pair.key().text(), List.of(one.text()), false));
    }

    private List<Text> items(Node.Pair pair, Node.Listing list) {
        List<Text> items = new ArrayList<>();
        if (list.cut()) {
            findings.lost();
        }
        for (Node item : list.items()) {
            if (item.scalar().filter(scalar -> !scalar.isNothing()).isEmpty()) {
                contents.wrongKind(item, "an item of `" + pair.name() + "`", "a single value",
                        "write `\"\"` for a set without a reading");
            }
            item.scalar().map(Node.Scalar::text).ifPresent(items::add);
        }
        return items;
    }
}
