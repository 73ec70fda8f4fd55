package rungwright.page;

import java.util.ArrayList;
import java.util.List;
import rungwright.finding.Shown;
import rungwright.program.Outline;
import rungwright.text.Language;
import rungwright.text.Words;

/** A program as a graph in the DOT language, for layout programs; every id and label stands in quotes. */
public final class DotPicture {
    private DotPicture() {
    }

    /** The graph, in English. */
    public static String of(Outline outline) {
        return of(outline, Language.ENGLISH);
    }

    /** The graph. */
    public static String of(Outline outline, Language language) {
        Sketch sketch = Sketch.of(outline, language);
        Words words = sketch.words();
        List<String> lines = new ArrayList<>(List.of("digraph " + quoted(sketch.title()) + " {",
                "    node [shape=box, fontname=\"sans-serif\"];", "    edge [fontname=\"sans-serif\"];",
                "    \"start\" [shape=oval, label=" + quoted(words.say("start")) + "];"));
        for (StageBox stage : sketch.stages()) {
            String rungs = stage.rungs().isEmpty() ? "" : "\n" + String.join(" | ", stage.rungs());
            lines.add("    " + node(sketch, stage.number()) + " [label="
                    + quoted(words.say("stage", Integer.toString(stage.number() + 1), stage.name()) + rungs)
                    + "];");
        }
        lines.add("    \"goal\" [peripheries=2, label=" + quoted(words.say("goalIs", sketch.goal())) + "];");
        if (sketch.links().stream().anyMatch(link -> link.from() == Sketch.ANYWHERE)) {
            lines.add("    \"anywhere\" [shape=hexagon, label=" + quoted(words.say("everywhere")) + "];");
        }
        if (!sketch.hasPlacement()) {
            lines.add("    \"start\" -> " + node(sketch, 0) + ";");
        }
        for (Link link : sketch.links()) {
            lines.add("    " + node(sketch, link.from()) + " -> " + node(sketch, link.to()) + " [style="
                    + style(link.kind()) + ", label=" + quoted(link.kind().word(words) + ": " + link.words())
                    + "];");
        }
        lines.add("}");
        return String.join("\n", lines) + "\n";
    }

    private static String node(Sketch sketch, int part) {
        if (part == Sketch.START || part == Sketch.ANYWHERE) {
            return part == Sketch.START ? "\"start\"" : "\"anywhere\"";
        }
        return part == sketch.goalNumber() ? "\"goal\"" : "\"stage " + (part + 1) + "\"";
    }

    private static String style(Link.Kind kind) {
        return switch (kind) {
            case ADVANCE -> "bold";
            case PLACE -> "solid";
            case FALL_BACK -> "dashed";
            case BREAK, CLEARED -> "dotted";
        };
    }

    /**
     * In quotes; a line break of ours stays one, a backslash, a quote and an ampersand of the coach's, which
     * Graphviz would read as the start of a letter's name, stand as they are.
     */
    private static String quoted(String words) {
        List<String> lines = words.lines().map(Shown::whole)
                .map(line -> line.replace("\\", "\\\\").replace("\"", "\\\"").replace("&", "&amp;")).toList();
        return "\"" + String.join("\\n", lines) + "\"";
    }
}
