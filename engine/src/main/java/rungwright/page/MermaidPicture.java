package rungwright.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.program.Outline;
import rungwright.text.Language;
import rungwright.text.Words;

/**
 * A program as a Mermaid flowchart, for places that draw those. It keeps within the limits that Mermaid
 * publishes: at most 50,000 characters and 500 edges; what a longer label says is cut.
 */
public final class MermaidPicture {
    /** The most characters that Mermaid draws, unless it is told otherwise. */
    public static final int MOST_CHARACTERS = 50_000;
    /** The most edges that Mermaid draws, unless it is told otherwise. */
    public static final int MOST_EDGES = 500;

    private static final int LONGEST_LABEL = 80;
    private static final int SHORTEST_LABEL = 10;

    private MermaidPicture() {
    }

    /** The flowchart in English. */
    public static Optional<String> of(Outline outline) {
        return of(outline, Language.ENGLISH);
    }

    /** The flowchart; nothing for a program that would go over the limits even with the shortest labels. */
    public static Optional<String> of(Outline outline, Language language) {
        Sketch sketch = Sketch.of(outline, language);
        int edges = sketch.links().size() + (sketch.hasPlacement() ? 0 : 1);
        for (int longest = LONGEST_LABEL; longest >= SHORTEST_LABEL; longest /= 2) {
            String chart = new Chart(sketch, longest).text();
            if (chart.length() <= MOST_CHARACTERS && edges <= MOST_EDGES) {
                return Optional.of(chart);
            }
        }
        return Optional.empty();
    }

    /** One attempt, with labels of at most so many characters. */
    private record Chart(Sketch sketch, int longest) {
        String text() {
            List<String> lines = new ArrayList<>(List.of("flowchart TD"));
            lines.add("    start([" + label(words().say("start")) + "])");
            sketch.stages().forEach(stage -> lines.add("    " + node(stage.number()) + "["
                    + label(words().say("stage", Integer.toString(stage.number() + 1), stage.name())) + "]"));
            lines.add("    goal[[" + label(words().say("goalIs", sketch.goal())) + "]]");
            if (sketch.links().stream().anyMatch(link -> link.from() == Sketch.ANYWHERE)) {
                lines.add("    anywhere{{" + label(words().say("everywhere")) + "}}");
            }
            if (!sketch.hasPlacement()) {
                lines.add("    start --> " + node(0));
            }
            sketch.links().forEach(link -> lines.add("    " + node(link.from()) + " " + arrow(link.kind())
                    + "|"
                    + label(link.kind().word(words()) + ": " + link.words()) + "| " + node(link.to())));
            return String.join("\n", lines) + "\n";
        }

        private Words words() {
            return sketch.words();
        }

        private String node(int part) {
            if (part == Sketch.START || part == Sketch.ANYWHERE) {
                return part == Sketch.START ? "start" : "anywhere";
            }
            return part == sketch.goalNumber() ? "goal" : "stage" + (part + 1);
        }

        private static String arrow(Link.Kind kind) {
            return switch (kind) {
                case ADVANCE -> "==>";
                case PLACE -> "-->";
                case FALL_BACK, BREAK, CLEARED -> "-.->";
            };
        }

        /** In quotes, where only what Mermaid itself reads needs a code. */
        private String label(String words) {
            String shown = Shown.whole(words);
            String cut = shown.codePointCount(0, shown.length()) <= longest ? shown
                    : shown.substring(0, shown.offsetByCodePoints(0, longest - 1)) + "…";
            StringBuilder escaped = new StringBuilder();
            cut.codePoints().forEach(point -> {
                if ("\"#&<>;`[]{}|\\*_".indexOf(point) >= 0) {
                    escaped.append('#').append(point).append(';');
                } else {
                    escaped.appendCodePoint(point);
                }
            });
            return "\"" + escaped + "\"";
        }
    }
}
