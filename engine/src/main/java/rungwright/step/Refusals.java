package rungwright.step;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Values;
import rungwright.program.Uses;
import rungwright.step.Refusal.Code;

/** Every reason to refuse an event, in words. */
final class Refusals {
    private Refusals() {
    }

    static Refused earlierDate(LocalDate date, LocalDate latest) {
        return refused(Code.EARLIER_DATE, List.of(date.toString(), latest.toString()),
                date + " is before " + latest + ", the day of the latest event");
    }

    static Refused alreadyRecorded(String id) {
        return refused(Code.ALREADY_RECORDED, List.of(id),
                "event " + Shown.quoted(id) + " is already recorded");
    }

    static Refused notEnrolled() {
        return refused(Code.NOT_ENROLLED, List.of(), "the trainee has not been enrolled yet");
    }

    static Refused alreadyEnrolled() {
        return refused(Code.ALREADY_ENROLLED, List.of(), "the trainee is enrolled already");
    }

    static Refused otherVersion(ProgramId state, ProgramId program) {
        return refused(Code.OTHER_VERSION, List.of(state.fingerprint(), program.fingerprint()),
                "the trainee follows " + state.show() + ", not " + program.show()
                        + "; the event `new version` carries them over");
    }

    static Refused unfitState(String what, String found) {
        return refused(Code.UNFIT_STATE, List.of(found),
                "the state does not fit the program: it has no " + what + " " + Shown.quoted(found));
    }

    static Refused stopped(List<String> rule) {
        String by = rule.isEmpty() ? "" : " by " + Shown.quoted(rule.get(0));
        return refused(Code.STOPPED, rule,
                "the trainee was stopped" + by + "; sessions go on after the event `clearance`");
    }

    static Refused notStopped() {
        return refused(Code.NOT_STOPPED, List.of(),
                "the trainee is not stopped, so there is nothing to clear");
    }

    static Refused unknownName(String what, String name, Collection<String> known) {
        String meant = Suggest.closest(name, known)
                .map(word -> "; did you mean " + Shown.quoted(word) + "?").orElse("");
        return refused(Code.UNKNOWN_NAME, List.of(name),
                Shown.quoted(name) + " is no " + what + " of this program" + meant);
    }

    static Refused wrongValue(String name, String value, Values values) {
        return refused(Code.WRONG_VALUE, List.of(name, value), Shown.quoted(value) + " is no value of "
                + Shown.quoted(name) + ", which takes " + ValueWords.of(values));
    }

    static Refused notForTheSession(String name) {
        return refused(Code.NOT_FOR_THE_SESSION, List.of(name),
                Shown.quoted(name) + " is logged in each set, not for the session");
    }

    static Refused notInASet(String name) {
        return refused(Code.NOT_IN_A_SET, List.of(name),
                Shown.quoted(name) + " is logged for the session, not in a set");
    }

    static Refused tooManySets(int sets) {
        return refused(Code.TOO_MANY_SETS, List.of(Integer.toString(sets)),
                sets + " sets were logged; a session has at most " + Measure.MOST_SETS);
    }

    static Refused missing(List<Measure> measures) {
        return refused(Code.MISSING_MEASURE, measures.stream().map(Measure::name).toList(),
                "not logged, though rules here read it: "
                        + measures.stream().map(Refusals::asked).collect(Collectors.joining(", ")));
    }

    private static String asked(Measure measure) {
        String question = measure.ask().map(ask -> " (" + Shown.whole(ask) + ")").orElse("");
        return Shown.quoted(measure.name()) + question;
    }

    static Refused noWholeSet(Quantity quantity) {
        List<String> parts = Uses.of(quantity).stream().map(Measure::name).toList();
        return refused(Code.NO_WHOLE_SET, parts, "no set has all of "
                + parts.stream().map(Shown::quoted).collect(Collectors.joining(", ")) + ", from which "
                + Shown.quoted(quantity.name()) + " is worked out");
    }

    static Refused missingFact(String name) {
        return refused(Code.MISSING_FACT, List.of(name), "the fact " + Shown.quoted(name) + " is not given");
    }

    static Refused wrongNumber(Fact fact, int items) {
        String most = fact.list().map(length -> length.least() + " to " + length.most() + " items")
                .orElse("one value");
        return refused(Code.WRONG_NUMBER, List.of(fact.name(), Integer.toString(items)),
                Shown.quoted(fact.name()) + " takes " + most + ", and " + items + " are given");
    }

    static Refused missingAssessment(Measure measure) {
        return refused(Code.MISSING_ASSESSMENT, List.of(measure.name()),
                "the assessment " + asked(measure) + " is not given");
    }

    static Refused noSuchPlace(String place) {
        return refused(Code.NO_SUCH_PLACE, List.of(place),
                Shown.quoted(place) + " is no place that this trainee can be moved to");
    }

    static Refused noReason() {
        return refused(Code.NO_REASON, List.of(), "a coach's move says why");
    }

    private static Refused refused(Code code, List<String> subjects, String message) {
        return new Refused(new Refusal(code, subjects, message));
    }
}
