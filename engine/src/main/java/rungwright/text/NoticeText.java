package rungwright.text;

import java.util.List;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.journal.Contents;
import rungwright.journal.Fold;
import rungwright.journal.Happening;
import rungwright.journal.Notices;
import rungwright.journal.Told;
import rungwright.step.ProgramId;

/** What somebody must know of a journal first, loudly. */
public final class NoticeText {
    private static final int MOST = 5;

    private NoticeText() {
    }

    /** The lines, an empty one last; none where there is nothing to know. */
    public static List<String> lines(Notices notices, Fold fold, Naming naming, Colours colours) {
        Paper paper = new Paper(colours);
        notices.damage().ifPresent(damage -> paper.strong(of(damage, naming)));
        notices.torn().ifPresent(torn -> paper.strong(of(torn, naming)));
        notices.toldOtherwise().ifPresent(told -> paper.strong(of(told, fold)));
        if (notices.toldOtherwise().isEmpty()) {
            fold.otherVersion().ifPresent(other -> paper.add("", of(other, fold)));
        }
        List<Happening> refused = notices.refused();
        refused.stream().limit(MOST).forEach(each -> paper.strong(of(each, naming)));
        if (refused.size() > MOST) {
            paper.strong("! So it is with " + (refused.size() - MOST) + " more.");
        }
        return paper.gap().lines();
    }

    /** That a journal is of a program of another name. */
    public static String otherProgram(ProgramId other, Fold fold, Naming naming) {
        return Shown.quoted(naming.journal()) + " is a journal of " + Shown.quoted(other.name()) + ", and "
                + Shown.quoted(naming.spec()) + " is " + Shown.quoted(fold.program().outline().name())
                + "; name the spec that the trainee follows";
    }

    private static String of(Contents.Damage damage, Naming naming) {
        return "! " + Shown.text(naming.journal()) + " is damaged: line " + damage.line()
                + " is not as it was"
                + " written (" + damage.reason()
                + "). Nothing can be added to it, and what it says from there"
                + " on is not known. Put a copy of the file in its place, or cut it before that line and"
                + " record again what came after.";
    }

    private static String of(Contents.Torn torn, Naming naming) {
        return "! The writing of line " + torn.line() + " of " + Shown.text(naming.journal())
                + " never ended, so nobody was told that it is recorded. If something is missing, record it"
                + " again; the " + Count.of(torn.bytes(), "byte") + " of it are kept in "
                + Shown.text(naming.journal()) + ".torn when the next entry is recorded.";
    }

    private static String of(Told told, Fold fold) {
        String version = Shown.text(told.program().version());
        String now = Shown.text(fold.program().outline().version());
        String spec = version.equals(now) ? "the spec has been changed since, and"
                : "by version " + now + ", which you named,";
        return "! Told otherwise: by version " + version + " they were last told to stand at "
                + Places.of(told) + "; " + spec + " the same history puts them at "
                + Places.of(fold.state()) + ". Tell them before anything else.";
    }

    private static String of(ProgramId other, Fold fold) {
        ProgramId own = ProgramId.of(fold.program());
        String spec = own.version().equals(other.version()) ? "the same version as it is now"
                : "version " + Shown.text(own.version()) + ", which you named";
        return "Their last entry was decided by version " + Shown.text(other.version())
                + " of the program; read"
                + " with " + spec + ", the history puts them at the same place.";
    }

    private static String of(Happening refused, Naming naming) {
        Optional<String> why = refused.decision().refusal().map(refusal -> refusal.message());
        return "! The spec as it is now refuses entry " + refused.number() + " of " + refused.date()
                + ", which"
                + " was recorded once: " + why.orElse("") + ". It counts for nothing until it is put right: "
                + naming.log("correct " + refused.number() + " ...") + ".";
    }
}
