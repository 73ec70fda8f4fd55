package rungwright.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import rungwright.finding.Shown;
import rungwright.journal.Group;
import rungwright.journal.Sheet;
import rungwright.journal.SheetRow;
import rungwright.journal.Today;
import rungwright.program.Prescription;
import rungwright.program.Standing;
import rungwright.step.Status;

/** What a sheet says, phrase by phrase, for whoever lays it out: on a terminal, on paper, in a calendar. */
public final class SheetWords {
    private static final int SHORT_DAY = 3;

    private SheetWords() {
    }

    /** {@code First bar dip, version 1}. */
    public static String program(Sheet sheet) {
        return Shown.text(sheet.program().outline().name()) + ", version "
                + Shown.text(sheet.program().outline().version());
    }

    /** {@code 12 trainees: 2 stopped, 5 due, 3 resting, 1 reached the goal, 1 broken; 2 stalled}. */
    public static String summary(Sheet sheet) {
        List<String> parts = new ArrayList<>();
        for (Group group : Group.values()) {
            int rows = sheet.rows(group).size();
            if (rows > 0) {
                parts.add(rows + " " + state(group));
            }
        }
        long stalled = sheet.enrolled().stream().filter(row -> row.marks().stalled()).count();
        long moved = sheet.enrolled().stream().filter(row -> row.marks().movedByCoach().isPresent()).count();
        return Count.of(sheet.rows().size(), "trainee") + (parts.isEmpty() ? "" : ": ")
                + String.join(", ", parts)
                + (stalled == 0 ? "" : "; " + stalled + " stalled")
                + (moved == 0 ? "" : "; " + moved + " where the coach moved them");
    }

    /** What its trainees are, in a word or two: {@code due}, {@code waiting for clearance}. */
    public static String state(Group group) {
        return switch (group) {
            case STOPPED -> "stopped";
            case DUE -> "due";
            case RESTING -> "resting";
            case REACHED -> "at the goal";
            case NOT_ENROLLED -> "not enrolled";
            case BROKEN -> "broken";
        };
    }

    /** A group's heading. */
    public static String heading(Group group) {
        return switch (group) {
            case STOPPED -> "Stopped, waiting for clearance";
            case DUE -> "Due today";
            case RESTING -> "Resting";
            case REACHED -> "At the goal";
            case NOT_ENROLLED -> "Not enrolled";
            case BROKEN -> "Journals of which nothing can be said";
        };
    }

    /** What holds for a group, in a sentence. */
    public static String meaning(Group group) {
        return switch (group) {
            case STOPPED -> "Stop, and seek medical help: no session until a professional has agreed to one.";
            case DUE -> "What to do in the next session, and how long they have been where they are.";
            case RESTING -> "Not due yet, by the days a week of their stage.";
            case REACHED -> "Sessions are kept, and move nobody until the coach does.";
            case NOT_ENROLLED -> "They have a journal, and are not in the program on this day.";
            case BROKEN -> "Put these right before anything is said of their trainees.";
        };
    }

    /** A day: {@code Wed 2026-03-04}. */
    public static String day(LocalDate day) {
        String name = day.getDayOfWeek().name();
        return name.charAt(0) + name.substring(1, SHORT_DAY).toLowerCase(Locale.ROOT) + " " + day;
    }

    /** A stage and its rung: {@code assisted dip, rung 40 kg}. */
    public static String place(Standing at) {
        return Shown.text(at.stageName())
                + (at.rungName().isEmpty() ? "" : ", rung " + Shown.text(at.rungName()));
    }

    /** Where a trainee stands on that day; {@code the goal} for who has reached it. */
    public static String place(Today today) {
        return today.status() == Status.REACHED ? "the goal" : place(today.at());
    }

    /** What to do, on a line: {@code Band-assisted dip: 3 sets of 4 to 8 reps}; empty where nothing is. */
    public static String task(Today today) {
        return today.prescription().map(SheetWords::task).orElse("");
    }

    private static String task(Prescription what) {
        List<String> work = new ArrayList<>();
        PrescriptionText.ENGLISH.work(what).ifPresent(work::add);
        what.load().ifPresent(load -> work.add("load " + Shown.whole(load)));
        String all = String.join(", ", work);
        return what.exercise().map(exercise -> Shown.whole(exercise) + (all.isEmpty() ? "" : ": " + all))
                .orElse(all);
    }

    /** How long they have been away: {@code 2 days}, {@code today}, {@code no session yet}. */
    public static String away(Today today) {
        return today.daysAway().map(days -> days == 0 ? "trained today" : Count.of(days, "day"))
                .orElse("no session yet");
    }

    /** All that is to be done, phrase by phrase; none where nothing is prescribed. */
    public static List<String> phrases(Today today) {
        return today.prescription().map(PrescriptionText.ENGLISH::phrases).orElse(List.of());
    }

    /** What the group and the place do not say: stops, breaks, the coach's own moves, and what is amiss. */
    public static List<SheetNote> notes(SheetRow row) {
        return row.match(new SheetNotes());
    }

    /** The stages in which somebody on the sheet trains, in order, with all that is to be done there. */
    public static Map<String, List<String>> stages(Sheet sheet) {
        Map<Integer, List<String>> byNumber = new TreeMap<>();
        sheet.enrolled().stream().map(SheetRow.Enrolled::today)
                .filter(today -> today.prescription().isPresent())
                .forEach(today -> byNumber.put(today.at().stage(), phrases(today)));
        Map<String, List<String>> byName = new LinkedHashMap<>();
        byNumber.forEach((number, phrases) -> byName.put(name(sheet, number), phrases));
        return byName;
    }

    private static String name(Sheet sheet, int stage) {
        return Shown.text(sheet.program().outline().stages().get(stage).name());
    }
}
