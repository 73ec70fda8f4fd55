package rungwright.text;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.journal.Fold;
import rungwright.journal.Happening;
import rungwright.journal.Objection;
import rungwright.program.Outline;
import rungwright.step.Event;

/** Reads what is true instead of what an entry says. */
record CorrectReader(LogWords words, Words log, Fold fold, LocalDate today) {
    private static final String USUAL_NUMBER = "[1-9][0-9]{0,8}";

    LogRequest request(List<String> mistakes) {
        if (words.rest().isEmpty() || !words.rest().get(0).matches(USUAL_NUMBER)) {
            mistakes.add(log.say("mistake.sayEntry"));
            return LogRequest.wrong(mistakes);
        }
        int number = Integer.parseInt(words.rest().get(0));
        Optional<Objection> not = fold.whyNotCorrectable(number);
        if (not.isPresent()) {
            mistakes.add(capital(new ObjectionText(outline(), Wording.of(outline(), log.language()))
                    .of(not.get())) + ".");
            return LogRequest.wrong(mistakes);
        }
        return words.withdraw() ? withdrawal(number, mistakes) : amendment(number, mistakes);
    }

    private Outline outline() {
        return fold.program().outline();
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private LogRequest withdrawal(int number, List<String> mistakes) {
        if (words.rest().size() > 1 || words.date().isPresent() || words.why().isPresent()) {
            mistakes.add(log.say("mistake.nothingWithdrawn"));
        }
        return mistakes.isEmpty() ? LogRequest.withdrawal(
                journal -> journal.correct(number, Optional.empty(), today, words.by()))
                : LogRequest.wrong(mistakes);
    }

    private LogRequest amendment(int number, List<String> mistakes) {
        Event before = fold.happening(number).map(Happening::event)
                .orElseGet(() -> fold.firstSaid(number).orElseThrow());
        LocalDate date = words.date().orElse(before.date());
        List<String> more = words.rest().subList(1, words.rest().size());
        if (more.isEmpty() && words.date().isEmpty() && words.why().isEmpty()) {
            mistakes.add(log.say("mistake.sayInstead", Integer.toString(number)));
        }
        What what = What.of(before);
        if (words.why().isPresent() && what != What.MOVE) {
            mistakes.add(log.say("mistake.idleOfEntry", what.noun(log), Integer.toString(number)));
        }
        Event instead = switch (what) {
            case ENROL, SESSION, FACTS -> answered(before, date, more, mistakes);
            case CLEARED, MOVE, CORRECT -> before.match(
                    new Rewording(String.join(" ", more), words.why(), date));
        };
        if (mistakes.isEmpty() && (what == What.MOVE || what == What.CLEARED)) {
            unlikely(number, what, more, mistakes);
        }
        return mistakes.isEmpty() ? LogRequest.of(instead,
                journal -> journal.correct(number, Optional.of(instead), today, words.by()))
                : LogRequest.wrong(mistakes);
    }

    private Event answered(Event before, LocalDate date, List<String> more, List<String> mistakes) {
        Answers answers = Answers.read(What.of(before).questions(outline()), more, log.language());
        mistakes.addAll(answers.mistakes());
        return answers.mistakes().isEmpty() ? answers.amend(before, date) : before;
    }

    /** Readings of something that has none. */
    private void unlikely(int number, What what, List<String> more, List<String> mistakes) {
        List<Questions> known = List.of(Questions.ofTrainee(outline()), Questions.ofSession(outline()));
        more.stream().filter(word -> known.stream().anyMatch(each -> each.before(word).isPresent()))
                .findFirst()
                .ifPresent(word -> mistakes.add(log.say("mistake.noReadings", Integer.toString(number),
                        what.noun(log), Shown.quoted(word))));
    }
}
