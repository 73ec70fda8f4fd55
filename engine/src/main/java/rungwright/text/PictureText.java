package rungwright.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwright.finding.Shown;
import rungwright.journal.Happening;
import rungwright.journal.History;
import rungwright.program.Stage;
import rungwright.program.Standing;
import rungwright.step.Kind;
import rungwright.step.State;
import rungwright.step.Status;

/**
 * A trainee's way in plain letters: a row a place with the goal on top, a column a session; of a long history
 * a column is several sessions, and a row several rungs.
 *
 * <pre>
 * goal                      |
 * assisted dip, rung 25 kg  |  oo c
 * assisted dip, rung 40 kg  |oo  o
 * </pre>
 */
final class PictureText {
    private static final int MOST_ROWS = 12;
    private static final int WIDEST_LABEL = 34;

    private final Map<String, int[]> heights = new LinkedHashMap<>();
    private final List<Point> points = new ArrayList<>();

    private final Wording wording;
    private final Words words;
    private final String goal;

    private PictureText(Wording wording) {
        this.wording = wording;
        this.words = wording.language().words("journal");
        this.goal = words.say("path.goal");
    }

    /** One session or move: where it left the trainee. */
    private record Point(LocalDate date, String place, char mark) {
    }

    /** The picture with its key; none before the first session. */
    static List<String> lines(History history, Wording wording) {
        PictureText picture = new PictureText(wording);
        for (Stage stage : history.fold().program().outline().stages()) {
            picture.heights.put(Shown.text(stage.name()), new int[] {stage.number(), 0});
        }
        history.fold().happenings().forEach(picture::take);
        return picture.points.isEmpty() ? List.of() : picture.draw(picture.bands());
    }

    private void take(Happening happening) {
        boolean drawn = happening.isSession() || happening.isOverride();
        if (!drawn || happening.decision().isRefused() || happening.decision().after().isEmpty()) {
            return;
        }
        State state = happening.decision().after().get();
        char mark = happening.isOverride() ? 'c' : happening.decision().kind() == Kind.STOP ? '!' : 'o';
        String place = state.status() == Status.REACHED ? goal : label(state.at());
        points.add(new Point(happening.date(), place, mark));
    }

    private String label(Standing at) {
        String label = wording.place(at);
        heights.put(label, new int[] {at.stage(), at.rung()});
        if (!at.rungName().isEmpty()) {
            heights.remove(Shown.text(at.stageName()));
        }
        return label;
    }

    /** The places from the top, those that must share a row together. */
    private List<List<String>> bands() {
        List<String> places = new ArrayList<>(heights.keySet());
        places.sort(Comparator.<String>comparingInt(place -> heights.get(place)[0])
                .thenComparingInt(place -> heights.get(place)[1]));
        int a = Math.max(1, (places.size() + MOST_ROWS - 1) / MOST_ROWS);
        List<List<String>> bands = new ArrayList<>();
        for (int from = 0; from < places.size(); from += a) {
            bands.add(List.copyOf(places.subList(from, Math.min(places.size(), from + a))));
        }
        bands.add(List.of(goal));
        Collections.reverse(bands);
        return bands;
    }

    private List<String> draw(List<List<String>> bands) {
        List<String> labels = bands.stream().map(this::label).toList();
        int wide = labels.stream().mapToInt(Width::of).max().orElse(0);
        int columns = Paper.WIDEST - wide - 2;
        int each = (points.size() + columns - 1) / columns;
        List<String> lines = new ArrayList<>();
        Language language = wording.language();
        lines.addAll(Wrap.lines(words.count("path.way", each, language.day(points.get(0).date()),
                language.day(points.get(points.size() - 1).date())), Paper.WIDEST));
        for (int row = 0; row < bands.size(); row++) {
            String label = labels.get(row);
            lines.add((label + " ".repeat(wide - Width.of(label)) + " |" + cells(bands.get(row), each))
                    .stripTrailing());
        }
        lines.add(key());
        return lines;
    }

    private String cells(List<String> band, int each) {
        StringBuilder cells = new StringBuilder();
        for (int from = 0; from < points.size(); from += each) {
            List<Point> some = points.subList(from, Math.min(points.size(), from + each));
            boolean here = band.contains(some.get(some.size() - 1).place());
            cells.append(here ? mark(some) : ' ');
        }
        return cells.toString();
    }

    /** Of several, the mark that matters most. */
    private static char mark(List<Point> some) {
        char mark = 'o';
        for (Point point : some) {
            mark = point.mark() == '!' || mark == '!' ? '!' : point.mark() == 'c' ? 'c' : mark;
        }
        return mark;
    }

    private String key() {
        return "o " + words.say("path.session") + (isDrawn('!') ? "   ! " + words.say("path.stop") : "")
                + (isDrawn('c') ? "   c " + words.say("path.moved") : "");
    }

    private boolean isDrawn(char mark) {
        return points.stream().anyMatch(point -> point.mark() == mark);
    }

    private String label(List<String> band) {
        String first = band.get(0);
        String label = band.size() == 1 ? first : words.say("path.range", first, band.get(band.size() - 1));
        if (Width.of(label) <= WIDEST_LABEL) {
            return label;
        }
        List<String> lines = Wrap.lines(label, WIDEST_LABEL - 3);
        return lines.get(0) + "...";
    }
}
