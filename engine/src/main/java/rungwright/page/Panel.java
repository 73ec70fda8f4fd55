package rungwright.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.text.Words;
import rungwright.text.Wrap;

/**
 * One box of a picture with its lines of text.
 *
 * @param part the stage it shows, or {@link Sketch#START}, {@link Sketch#ANYWHERE}, or the goal's number
 * @param look the class of its frame
 * @param lines from top to bottom
 * @param top where it begins, once it has a place
 */
record Panel(int part, String look, List<Line> lines, int top) {
    /** How wide every panel is. */
    static final int WIDTH = 520;

    private static final int COLUMNS = 76;
    private static final int PADDING = 12;

    Panel {
        lines = List.copyOf(lines);
    }

    /** A line of text, or a row of cells. */
    private record Line(String look, String words, List<String> cells, int height) {
    }

    static Panel everywhere(Sketch sketch) {
        List<Line> lines = new ArrayList<>(List.of(text("name", sketch.words().say("everywhere"))));
        sketch.everywhere().forEach(rule -> lines.addAll(wrapped("small", rule)));
        return new Panel(Sketch.ANYWHERE, "everywhere", lines, 0);
    }

    static Panel start(Sketch sketch) {
        Words words = sketch.words();
        List<Line> lines = new ArrayList<>(List.of(text("name", words.say("start"))));
        List<Link> ways = sketch.links().stream().filter(link -> link.kind() == Link.Kind.PLACE).toList();
        for (Link way : ways) {
            String to = way.to() == sketch.goalNumber() ? words.say("toTheGoal")
                    : words.say("toStage", Integer.toString(way.to() + 1),
                            sketch.stages().get(way.to()).name());
            lines.addAll(wrapped("small", words.say("placeWhen", way.words(), to)));
        }
        if (ways.isEmpty()) {
            lines.add(text("small", words.say("everybody")));
        }
        return new Panel(Sketch.START, "start", lines, 0);
    }

    static Panel stage(StageBox stage, Words words, Optional<Trail> trail) {
        List<Line> lines = new ArrayList<>();
        wrapped("name", words.say("stage", Integer.toString(stage.number() + 1), stage.name()))
                .forEach(lines::add);
        stage.doing().stream().limit(2).forEach(phrase -> lines.addAll(wrapped("small", phrase)));
        lines.addAll(Cells.rows(stage.rungs()).stream().map(row -> new Line("cells", "", row, 34)).toList());
        stage.rules().forEach(rule -> lines.addAll(wrapped("small", rule)));
        lines.addAll(marks(stage.number(), trail));
        return new Panel(stage.number(), "stage", lines, 0);
    }

    static Panel goal(Sketch sketch, Optional<Trail> trail) {
        List<Line> lines = new ArrayList<>(List.of(text("name", sketch.words().say("goal"))));
        lines.addAll(wrapped("small", sketch.goal()));
        lines.addAll(marks(sketch.goalNumber(), trail));
        return new Panel(sketch.goalNumber(), "goal", lines, 0);
    }

    /** What a trail says of its times here. */
    private static List<Line> marks(int part, Optional<Trail> trail) {
        List<Line> lines = new ArrayList<>();
        List<Trail.Step> steps = trail.map(Trail::steps).orElse(List.of());
        for (int step = 0; step < steps.size(); step++) {
            if (steps.get(step).stage() == part) {
                lines.addAll(wrapped("small mark", (step + 1) + ": " + steps.get(step).words()));
            }
        }
        return lines;
    }

    private static Line text(String look, String words) {
        return new Line(look, words, List.of(), look.equals("name") ? 24 : 18);
    }

    private static List<Line> wrapped(String look, String words) {
        int columns = look.equals("name") ? COLUMNS * 3 / 4 : COLUMNS;
        return Wrap.lines(words, columns).stream().map(line -> text(look, line)).toList();
    }

    Panel at(int y) {
        return new Panel(part, look, lines, y);
    }

    int height() {
        return 2 * PADDING + lines.stream().mapToInt(Line::height).sum();
    }

    String svg(int left) {
        StringBuilder svg = new StringBuilder("<g><rect class=\"box " + look + "\" x=\"" + left + "\" y=\""
                + top
                + "\" width=\"" + WIDTH + "\" height=\"" + height() + "\" rx=\"8\"/>\n");
        int y = top + PADDING;
        for (Line line : lines) {
            if (line.cells().isEmpty()) {
                svg.append("<text class=\"").append(line.look()).append("\" x=\"").append(left + PADDING)
                        .append("\" y=\"").append(y + line.height() - 5).append("\">")
                        .append(Markup.text(line.words())).append("</text>\n");
            } else {
                svg.append(Cells.svg(line.cells(), left + PADDING, y + 4, WIDTH - 2 * PADDING));
            }
            y += line.height();
        }
        return svg.append("</g>\n").toString();
    }
}
