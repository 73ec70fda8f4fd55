package rungwright.text;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.journal.Fold;
import rungwright.journal.Happening;
import rungwright.journal.Written;
import rungwright.program.Stage;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.Refusal;

/** The ways out of a refusal, as commands that can be typed next. */
record WaysOut(Fold fold, Naming naming, Wording wording, Words words) {
    static List<String> of(Written.Refused written, LogRequest request, Naming naming, Wording wording) {
        WaysOut ways = new WaysOut(written.fold(), naming, wording, wording.language().words("log"));
        Optional<Refusal> refusal = written.decision().flatMap(Decision::refusal);
        return refusal.map(ways::of).orElseGet(() -> request.event().map(ways::of).orElse(List.of()));
    }

    private List<String> of(Refusal refusal) {
        return switch (refusal.code()) {
            case STOPPED -> List.of(words.say("way.stopped", naming.log("cleared --by NAME")));
            case NOT_ENROLLED -> List.of(words.say("way.enrol", naming.log("enrol FACT=VALUE ...")));
            case ALREADY_ENROLLED -> List.of(
                    words.say("way.changed", naming.log("facts FACT=VALUE ...")),
                    words.say("way.wrongly", naming.log("correct 1 FACT=VALUE ...")));
            case NO_SUCH_PLACE -> places(refusal.subjects().stream().findFirst().orElse(""));
            case MISSING_MEASURE, MISSING_FACT, MISSING_ASSESSMENT, NO_WHOLE_SET ->
                    List.of(words.say("way.add", wording.and(refusal.subjects().stream()
                            .map(name -> Shown.quoted(name + "=VALUE")).toList())));
            case EARLIER_DATE, ALREADY_RECORDED, OTHER_VERSION, UNFIT_STATE, NOT_STOPPED, UNKNOWN_NAME,
                    WRONG_VALUE, NOT_FOR_THE_SESSION, NOT_IN_A_SET, TOO_MANY_SETS, WRONG_NUMBER, NO_REASON ->
                    List.of();
        };
    }

    private List<String> places(String written) {
        List<String> stages = fold.program().outline().stages().stream().map(Stage::name).toList();
        List<String> known = Stream.concat(stages.stream().map(name -> "stage " + name),
                Stream.of("start", "goal")).toList();
        Optional<String> meant = Suggest.closest(written, known).or(() -> Suggest.closest(written, stages)
                .map(name -> "stage " + name));
        String places = words.say("way.places", wording.and(known.stream().map(Shown::quoted).toList()));
        return List.of(meant.map(place -> words.say("way.meant", Shown.quoted(place), places))
                .orElse(places));
    }

    /** Where it is not the program that refuses, but another entry that stands in the way. */
    private List<String> of(Event event) {
        Optional<Happening> sameDay = fold.happenings().stream()
                .filter(each -> each.isSession() && event instanceof Event.Session
                        && each.date().equals(event.date())).reduce((first, later) -> later);
        if (fold.latestDay().filter(event.date()::isBefore).isPresent() && sameDay.isEmpty()) {
            return List.of(words.say("way.late"), words.say("way.date"));
        }
        return sameDay.map(there -> List.of(
                words.say("way.thatWrong", naming.log("correct " + there.number() + " NAME=VALUE ...")),
                words.say("way.another"))).orElse(List.of());
    }
}
