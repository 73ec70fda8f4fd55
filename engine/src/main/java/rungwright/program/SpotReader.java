package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.measure.Amount;
import rungwright.measure.Ratio;
import rungwright.measure.Take;

/** Reads the values of a phrase that has been taken apart, and puts its ends where they stand. */
final class SpotReader {
    private final Subject subject;
    private final ShareSpots shares;
    private final Troubles troubles;
    private final String phrase;
    private final Place place;

    SpotReader(Subject subject, ShareSpots shares, Troubles troubles, String phrase, Place place) {
        this.subject = subject;
        this.shares = shares;
        this.troubles = troubles;
        this.phrase = phrase;
        this.place = place;
    }

    /** The alternatives, or nothing after saying which value is wrong. */
    Optional<List<List<Reach>>> read(Ask ask) {
        List<List<Reach>> alternatives = new ArrayList<>();
        for (List<Comparison.End> ends : ask.how().ends(ask.values().size())) {
            List<Reach> parts = new ArrayList<>();
            for (Comparison.End end : ends) {
                Optional<Spot> spot = spot(ask.values().get(end.value()), take(ask, end));
                if (spot.isEmpty()) {
                    return Optional.empty();
                }
                parts.add(new Reach(spot.get().quantity(), spot.get().bounds(end), spot.get().gauge()));
            }
            alternatives.add(Reach.joined(parts));
        }
        return isBackwards(ask) ? backwards(ask) : Optional.of(alternatives);
    }

    private Optional<Take> take(Ask ask, Comparison.End end) {
        return subject.bySet() ? ask.sets().map(sets -> sets.take(end.lower())).or(subject::take)
                : Optional.empty();
    }

    private Optional<Spot> spot(String value, Optional<Take> take) {
        Gauge gauge = subject.gauge(take);
        if (gauge.words().isEmpty()) {
            Optional<ShareText> share = ShareText.read(value);
            if (share.isPresent()) {
                return shares.spot(share.get(), subject, take, place);
            }
            if (Amount.read(value).isEmpty()) {
                return troubles.refuse(Code.BAD_VALUE, place, Shown.quoted(phrase)
                        + " is no phrase that " + Shown.quoted(subject.name()) + " can be asked with",
                        hint(value));
            }
        }
        return gauge.read(value, place, troubles).map(at -> new Spot(subject.quantity(take), at, gauge));
    }

    private String hint(String value) {
        return AskHints.of(phrase).map(meant -> "write " + Shown.quoted(meant))
                .or(() -> AmountReader.unitHint(value))
                .orElse("write `at least 12`, `at most 3`, `over 5`, `under 5`, `5 to 12`, `12` or `not 12`");
    }

    private boolean isBackwards(Ask ask) {
        if (ask.how() != Comparison.BETWEEN) {
            return false;
        }
        String least = ask.values().get(0);
        String most = ask.values().get(1);
        Optional<ShareText> leastShare = share(least);
        Optional<ShareText> mostShare = share(most);
        if (leastShare.isPresent() || mostShare.isPresent()) {
            return leastShare.isPresent() && mostShare.isPresent()
                    && leastShare.get().fact().equals(mostShare.get().fact())
                    && leastShare.get().factor().compareTo(mostShare.get().factor()) > 0;
        }
        Gauge gauge = subject.gauge(take(ask, new Comparison.End(0, true, true)));
        return number(gauge, least).compareTo(number(gauge, most)) > 0;
    }

    private Optional<ShareText> share(String value) {
        return subject.gauge(subject.take()).words().isEmpty() ? ShareText.read(value) : Optional.empty();
    }

    /** A value that has been read before. */
    private Ratio number(Gauge gauge, String value) {
        return gauge.read(value, place, new Troubles()).orElseThrow();
    }

    private Optional<List<List<Reach>>> backwards(Ask ask) {
        return troubles.refuse(Code.BAD_VALUE, place, Shown.quoted(phrase) + " runs backwards", "write `"
                + Shown.text(ask.values().get(1)) + " to " + Shown.text(ask.values().get(0)) + "`");
    }
}
