package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.spec.CriterionSpec;
import rungwright.spec.Entry;
import rungwright.spec.RuleKind;
import rungwright.spec.Text;

/** Reads a criterion, {@code measure: phrase}. */
final class CriterionReader {
    private static final int MOST_LISTED = 20;

    private final Vocabulary names;
    private final MissingTakes missing;
    private final ShareSpots shares;
    private final Troubles troubles;

    CriterionReader(Vocabulary names, MissingTakes missing, ShareSpots shares, Troubles troubles) {
        this.names = names;
        this.missing = missing;
        this.shares = shares;
        this.troubles = troubles;
    }

    /** The criterion, or nothing after saying what is wrong with it or with what it asks about. */
    Optional<DraftCriterion> read(CriterionSpec spec, RuleKind where) {
        String name = Tidy.of(spec.measure());
        names.use(name, where);
        Optional<Subject> subject = names.subject(name, where);
        if (subject.isEmpty()) {
            if (!names.isLost(name, where)) {
                unknown(name, where, spec.measure().place());
            }
            return Optional.empty();
        }
        return read(spec.entry(), subject.get(), where == RuleKind.BREAK);
    }

    private void unknown(String name, RuleKind where, Place place) {
        Optional<String> elsewhere = names.elsewhere(name);
        Optional<String> meant = Suggest.closest(name, names.names(where));
        meant.ifPresent(known -> names.use(known, where));
        String hint = elsewhere.isPresent() ? "ask about it " + elsewhere.get()
                : meant.map(known -> "did you mean " + Shown.quoted(known) + "?")
                        .orElse("known here: " + names.names(where).stream().limit(MOST_LISTED)
                        .map(Shown::quoted)
                                .collect(Collectors.joining(", ")));
        troubles.add(Code.UNKNOWN_NAME, place, Shown.quoted(name)
                + (elsewhere.isPresent() ? " cannot be asked about here" : " is not defined"), hint);
    }

    private Optional<DraftCriterion> read(Entry entry, Subject subject, boolean early) {
        List<List<Reach>> alternatives = new ArrayList<>();
        boolean readable = true;
        for (Text text : entry.values()) {
            Optional<List<List<Reach>>> read =
                    new PhraseReader(subject, names, missing, shares, troubles).read(text, entry.isList());
            read.ifPresent(alternatives::addAll);
            readable &= read.isPresent();
        }
        if (!readable) {
            return Optional.empty();
        }
        String phrase = entry.values().stream().map(Tidy::of).collect(Collectors.joining(", "));
        List<List<Want>> anyOf = alternatives.stream().filter(all -> all.stream().allMatch(Reach::isPossible))
                .map(all -> Reach.needed(all, early)).toList();
        if (anyOf.isEmpty()) {
            return troubles.refuse(Code.NEVER_TRUE, entry.value().place(), "no session has "
                    + Shown.quoted(subject.name()) + " " + Shown.text(phrase),
                    "ask for a value that it can have");
        }
        return Optional.of(new DraftCriterion(subject.name(), phrase, entry.value().place(), anyOf));
    }
}
