package rungwright.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rungwright.finding.Shown;
import rungwright.journal.Group;
import rungwright.journal.Sheet;
import rungwright.journal.SheetRow;
import rungwright.journal.Today;
import rungwright.program.Outline;
import rungwright.program.Prescription;
import rungwright.step.Status;

/** What a sheet says, phrase by phrase, for whoever lays it out: on a terminal, on paper, in a calendar. */
public final class SheetPhrases {
    private final Sheet sheet;
    private final Outline outline;
    private final Wording wording;
    private final Words words;

    /** The phrases about a sheet in a language. */
    public SheetPhrases(Sheet sheet, Language language) {
        this.sheet = sheet;
        this.outline = sheet.program().outline();
        this.wording = Wording.of(outline, language);
        this.words = language.words("sheet");
    }

    /** The language. */
    public Language language() {
        return wording.language();
    }

    /** One of our phrases by its key, with its gaps filled. */
    public String say(String key, String... values) {
        return words.say(key, values);
    }

    /** {@code First bar dip, version 1}. */
    public String program() {
        return words.say("program", Shown.text(outline.name()), Shown.text(outline.version()));
    }

    /** {@code 12 trainees: 2 stopped, 5 due, 3 resting, 1 reached the goal, 1 broken; 2 stalled}. */
    public String summary() {
        List<String> parts = new ArrayList<>();
        for (Group group : Group.values()) {
            int rows = sheet.rows(group).size();
            if (rows > 0) {
                parts.add(rows + " " + state(group));
            }
        }
        String trainees = words.count("trainees", sheet.rows().size());
        String summary = parts.isEmpty() ? trainees
                : words.say("summary", trainees, String.join(", ", parts));
        long stalled = sheet.enrolled().stream().filter(row -> row.marks().stalled()).count();
        String all = stalled == 0 ? summary : words.say("summary.stalled", summary, Long.toString(stalled));
        long moved = sheet.enrolled().stream().filter(row -> row.marks().movedByCoach().isPresent()).count();
        return moved == 0 ? all : words.say("summary.moved", all, Long.toString(moved));
    }

    /** What its trainees are, in a word or two: {@code due}, {@code waiting for clearance}. */
    public String state(Group group) {
        return words.say("state." + key(group));
    }

    /** A group's heading. */
    public String heading(Group group) {
        return words.say("heading." + key(group));
    }

    /** What holds for a group, in a sentence. */
    public String meaning(Group group) {
        return words.say("meaning." + key(group));
    }

    private static String key(Group group) {
        return switch (group) {
            case STOPPED -> "stopped";
            case DUE -> "due";
            case RESTING -> "resting";
            case REACHED -> "reached";
            case NOT_ENROLLED -> "notEnrolled";
            case BROKEN -> "broken";
        };
    }

    /** A day: {@code Wed 2026-03-04}. */
    public String day(LocalDate day) {
        return language().weekday(day);
    }

    /** Where a trainee stands on that day; {@code the goal} for who has reached it. */
    public String place(Today today) {
        return today.status() == Status.REACHED ? wording.rules().say("target.goal")
                : wording.place(today.at());
    }

    /** What to do, on a line: {@code Band-assisted dip: 3 sets of 4 to 8 reps}; empty where nothing is. */
    public String task(Today today) {
        return today.prescription().map(this::task).orElse("");
    }

    private String task(Prescription what) {
        PrescriptionText text = new PrescriptionText(wording);
        List<String> work = new ArrayList<>();
        text.work(what).ifPresent(work::add);
        text.load(what).ifPresent(work::add);
        String all = String.join(", ", work);
        return what.exercise().map(exercise -> Shown.whole(exercise) + (all.isEmpty() ? "" : ": " + all))
                .orElse(all);
    }

    /** How many sessions they have trained where they stand: {@code 3 sessions here}. */
    public String here(Today today) {
        return words.count("here", today.sessionsHere());
    }

    /** How long they have been away: {@code 2 days}, {@code trained today}, {@code no session yet}. */
    public String away(Today today) {
        return today.daysAway().map(days -> words.count("away", days)).orElseGet(() -> words.say(
                "noSession"));
    }

    /** The same where no heading says what it is: {@code 2 days away}. */
    public String longAway(Today today) {
        return today.daysAway().map(days -> words.count("longAway", days)).orElseGet(() -> words.say(
                "noSession"));
    }

    /** All that is to be done, phrase by phrase; none where nothing is prescribed. */
    public List<String> phrases(Today today) {
        return today.prescription().map(new PrescriptionText(wording)::phrases).orElse(List.of());
    }

    /** What the group and the place do not say: stops, breaks, the coach's own moves, and what is amiss. */
    public List<SheetNote> notes(SheetRow row) {
        return row.match(new SheetNotes(wording));
    }

    /** The stages in which somebody on the sheet trains, in order, with all that is to be done there. */
    public Map<String, List<String>> stages() {
        Map<Integer, List<String>> byNumber = new TreeMap<>();
        sheet.enrolled().stream().map(SheetRow.Enrolled::today)
                .filter(today -> today.prescription().isPresent())
                .forEach(today -> byNumber.put(today.at().stage(), phrases(today)));
        Map<String, List<String>> byName = new LinkedHashMap<>();
        byNumber.forEach((number, phrases) -> byName.put(Shown.text(outline.stages().get(number).name()),
                phrases));
        return byName;
    }
}
