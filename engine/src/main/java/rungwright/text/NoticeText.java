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

    private final Fold fold;
    private final Naming naming;
    private final Wording wording;
    private final Words words;

    private NoticeText(Fold fold, Naming naming, Language language) {
        this.fold = fold;
        this.naming = naming;
        this.wording = Wording.of(fold.program().outline(), language);
        this.words = language.words("journal");
    }

    /** The lines in English, an empty one last; none where there is nothing to know. */
    public static List<String> lines(Notices notices, Fold fold, Naming naming, Colours colours) {
        return lines(notices, fold, naming, Language.ENGLISH, colours);
    }

    /** The lines, an empty one last; none where there is nothing to know. */
    public static List<String> lines(Notices notices, Fold fold, Naming naming, Language language,
            Colours colours) {
        NoticeText text = new NoticeText(fold, naming, language);
        Paper paper = new Paper(colours);
        notices.damage().ifPresent(damage -> paper.strong(text.of(damage)));
        notices.torn().ifPresent(torn -> paper.strong(text.of(torn)));
        notices.toldOtherwise().ifPresent(told -> paper.strong(text.of(told)));
        if (notices.toldOtherwise().isEmpty()) {
            fold.otherVersion().ifPresent(other -> paper.add("", text.of(other)));
        }
        List<Happening> refused = notices.refused();
        refused.stream().limit(MOST).forEach(each -> paper.strong(text.of(each)));
        if (refused.size() > MOST) {
            paper.strong(text.words.say("notice.more", Integer.toString(refused.size() - MOST)));
        }
        return paper.gap().lines();
    }

    /** That a journal is of a program of another name. */
    public static String otherProgram(ProgramId other, Fold fold, Naming naming) {
        return Shown.quoted(naming.journal()) + " is a journal of " + Shown.quoted(other.name()) + ", and "
                + Shown.quoted(naming.spec()) + " is " + Shown.quoted(fold.program().outline().name())
                + "; name the spec that the trainee follows";
    }

    private String of(Contents.Damage damage) {
        return words.say("notice.damaged", Shown.text(naming.journal()), String.valueOf(damage.line()),
                damage.reason());
    }

    private String of(Contents.Torn torn) {
        return words.count("notice.torn", torn.bytes(), Shown.text(naming.journal()), String.valueOf(torn
                .line()));
    }

    private String of(Told told) {
        String version = Shown.text(told.program().version());
        String now = Shown.text(fold.program().outline().version());
        String before = Places.of(told, wording);
        String after = Places.of(fold.state(), wording);
        return version.equals(now) ? words.say("notice.toldByOldSpec", version, before, after)
                : words.say("notice.toldByVersion", version, before, after, now);
    }

    private String of(ProgramId other) {
        ProgramId own = ProgramId.of(fold.program());
        String version = Shown.text(other.version());
        return own.version().equals(other.version()) ? words.say("notice.sameVersion", version)
                : words.say("notice.otherVersion", version, Shown.text(own.version()));
    }

    private String of(Happening refused) {
        Optional<String> why = refused.decision().refusal()
                .map(new RefusalText(fold.program().outline(), wording)::of);
        return words.say("notice.refused", Integer.toString(refused.number()),
                wording.language().day(refused.date()), why.orElse(""),
                naming.log("correct " + refused.number() + " ..."));
    }
}
