package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.measure.Amount;
import rungwright.measure.Take;
import rungwright.spec.Text;

/** Reads the phrase of a criterion about one subject: alternatives, each of parts that must all hold. */
final class PhraseReader {
    private final Subject subject;
    private final Vocabulary names;
    private final MissingTakes missing;
    private final ShareSpots shares;
    private final Troubles troubles;

    PhraseReader(Subject subject, Vocabulary names, MissingTakes missing, ShareSpots shares,
            Troubles troubles) {
        this.subject = subject;
        this.names = names;
        this.missing = missing;
        this.shares = shares;
        this.troubles = troubles;
    }

    /** The alternatives of a phrase, which as an item of a list is one value. */
    Optional<List<List<Reach>>> read(Text text, boolean inList) {
        String tidy = Tidy.of(text);
        Gauge gauge = subject.gauge(subject.take());
        Ask ask = new AskReader(value -> isValue(gauge, value)).read(tidy);
        Optional<String> refusal = new AskRules(subject, gauge, inList).refusal(ask);
        if (refusal.isPresent() && ask.values().stream().allMatch(value -> isValue(gauge, value))) {
            return troubles.refuse(Code.BAD_VALUE, text.place(),
                    Shown.quoted(tidy) + " does not go with " + Shown.quoted(subject.name()), refusal.get());
        }
        if (subject.bySet() && ask.sets().isEmpty() && subject.take().isEmpty()) {
            missing.add(subject.name(), text.place());
            return Optional.empty();
        }
        return new SpotReader(subject, shares, troubles, tidy, text.place()).read(ask);
    }

    private boolean isValue(Gauge gauge, String tidy) {
        return gauge.words().isEmpty()
                ? Amount.read(tidy).isPresent()
                        || ShareText.read(tidy).filter(share -> names.isFact(share.fact())).isPresent()
                : gauge.words().contains(tidy);
    }
}
