package rungwright.text;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.journal.Fold;
import rungwright.journal.Happening;
import rungwright.step.Event;

/** Reads what is true instead of what an entry says. */
record CorrectReader(LogWords words, Fold fold, LocalDate today) {
    private static final String USUAL_NUMBER = "[1-9][0-9]{0,8}";

    LogRequest request(List<String> mistakes) {
        if (words.rest().isEmpty() || !words.rest().get(0).matches(USUAL_NUMBER)) {
            mistakes.add("Say which entry is wrong by its number, as in `correct 5 ...`; `history`"
                    + " shows them.");
            return LogRequest.wrong(mistakes);
        }
        int number = Integer.parseInt(words.rest().get(0));
        Optional<String> not = fold.whyNotCorrectable(number);
        if (not.isPresent()) {
            mistakes.add(capital(not.get()) + ".");
            return LogRequest.wrong(mistakes);
        }
        return words.withdraw() ? withdrawal(number, mistakes) : amendment(number, mistakes);
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private LogRequest withdrawal(int number, List<String> mistakes) {
        if (words.rest().size() > 1 || words.date().isPresent() || words.why().isPresent()) {
            mistakes.add("What never happened has no readings, no day and no reason; leave out either those"
                    + " or --withdraw.");
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
            mistakes.add("Say what is true instead of entry " + number + ": NAME=VALUE, --date, or --withdraw"
                    + " where it never happened.");
        }
        What what = What.of(before);
        if (words.why().isPresent() && what != What.MOVE) {
            mistakes.add("`--why` says nothing about " + what.noun() + ", which entry " + number + " is.");
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
        Answers answers = Answers.read(What.of(before).questions(fold.program().outline()), more);
        mistakes.addAll(answers.mistakes());
        return answers.mistakes().isEmpty() ? answers.amend(before, date) : before;
    }

    /** Readings of something that has none. */
    private void unlikely(int number, What what, List<String> more, List<String> mistakes) {
        List<Questions> known = List.of(Questions.ofTrainee(fold.program().outline()),
                Questions.ofSession(fold.program().outline()));
        more.stream().filter(word -> known.stream().anyMatch(each -> each.before(word).isPresent()))
                .findFirst()
                .ifPresent(word -> mistakes.add("Entry " + number + " is " + what.noun() + ", which has no "
                        + Shown.quoted(word) + "; withdraw it with `correct " + number
                        + " --withdraw`, and record what happened."));
    }
}
