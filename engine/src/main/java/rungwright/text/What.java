package rungwright.text;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.program.Outline;
import rungwright.step.Event;

/** What can be recorded in a journal, by the words of the command line. */
public enum What implements Event.Cases<Boolean> {
    /** A trainee starts. */
    ENROL,
    /** A session was trained. */
    SESSION,
    /** Who was stopped may go on. */
    CLEARED,
    /** Facts changed, or there is a new assessment. */
    FACTS,
    /** The coach moves a trainee. */
    MOVE,
    /** An earlier entry was wrong. */
    CORRECT;

    /** As it is typed: {@code session}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The same in the words of the bundle {@code log}: {@code Einheit}. */
    String said(Words words) {
        return words.say("what." + word());
    }

    /** As it is spoken of: {@code a session}; in German as it stands behind {@code zu}. */
    String noun(Words words) {
        return words.say("a." + word());
    }

    /** The one so typed, if there is one. */
    public static Optional<What> read(String word) {
        return Arrays.stream(values()).filter(what -> what.word().equals(word)).findFirst();
    }

    /** What to say of a word that is none of them. */
    public static String unknown(String word) {
        List<String> words = Arrays.stream(values()).map(What::word).toList();
        return Shown.quoted(word) + " cannot be recorded" + Suggest.closest(word, words)
                .map(meant -> "; did you mean `" + meant + "`?")
                .orElse("; write one of " + Listed.or(words));
    }

    /** What an event of a journal is; a new version counts as changed facts. */
    static What of(Event event) {
        return Arrays.stream(values()).filter(event::match).findFirst().orElseThrow();
    }

    /** The questions that it answers. */
    public Questions questions(Outline outline) {
        return switch (this) {
            case ENROL, FACTS -> Questions.ofTrainee(outline);
            case SESSION -> Questions.ofSession(outline);
            case CLEARED, MOVE, CORRECT -> Questions.NONE;
        };
    }

    @Override
    public Boolean enrol(Event.Enrol event) {
        return this == ENROL;
    }

    @Override
    public Boolean session(Event.Session event) {
        return this == SESSION;
    }

    @Override
    public Boolean clearance(Event.Clearance event) {
        return this == CLEARED;
    }

    @Override
    public Boolean factsChanged(Event.FactsChanged event) {
        return this == FACTS;
    }

    @Override
    public Boolean move(Event.Move event) {
        return this == MOVE;
    }

    @Override
    public Boolean newVersion(Event.NewVersion event) {
        return this == FACTS;
    }
}
