package rungwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungwright.program.Checked;
import rungwright.program.Outline;
import rungwright.text.Language;

/** Every way of every example is drawn in each form, told apart without colour, and named in the legend. */
class PictureWaysTest {
    private static List<Outline> outlines() throws IOException {
        List<Outline> outlines = new ArrayList<>();
        try (Stream<Path> folders = Files.list(Path.of("../spec-examples"))) {
            for (Path folder : folders.filter(Files::isDirectory).sorted().toList()) {
                outlines.add(Checked.read(Files.readString(folder.resolve("program.yaml"))).outline()
                        .orElseThrow());
            }
        }
        return outlines;
    }

    @Test
    void everyWayIsDrawnWithWhenItIsGoneAndItsKindStandsInTheLegend() throws IOException {
        Set<Link.Kind> kinds = new HashSet<>();
        for (Outline outline : outlines()) {
            Sketch sketch = Sketch.of(outline, Language.ENGLISH);
            for (String svg : List.of(SvgPicture.of(outline, Optional.empty()),
                    SvgPicture.slices(outline, Layout.DESK, Language.ENGLISH),
                    SvgPicture.slices(outline, Layout.PHONE, Language.ENGLISH))) {
                for (Link link : sketch.links()) {
                    assertDrawn(sketch, link, svg, outline.name());
                    kinds.add(link.kind());
                }
            }
        }
        assertEquals(Set.of(Link.Kind.values()), kinds);
    }

    private static void assertDrawn(Sketch sketch, Link link, String svg, String name) {
        String word = link.kind().word(sketch.words());
        String said = sketch.words(link);
        Pattern way = Pattern.compile("<path class=\"way " + link.kind().look() + "\"[^>]*><title>"
                + Pattern.quote(word + (said.isEmpty() ? "" : ": " + Markup.text(said))) + "</title>");
        assertTrue(way.matcher(svg).find(), () -> name + ": no line " + link + "\n" + svg);
        assertTrue(Pattern.compile("<path class=\"way " + link.kind().look() + "\"[^>]*/><text[^>]*>"
                + Pattern.quote(word) + "</text>").matcher(svg).find(), () -> name + ": no legend for "
                + word);
    }

    @Test
    void kindsOfWaysDifferWithoutColour() {
        Set<String> looks = new HashSet<>();
        for (Link.Kind kind : Link.Kind.values()) {
            String rule = Pattern.compile("\\." + kind.look() + "\\{([^}]*)\\}").matcher(PictureStyle.RULES)
                    .results().findFirst().orElseThrow(() -> new AssertionError(kind + " has no look"))
                    .group(1);
            looks.add(rule.replaceAll("(stroke|fill):[^;}]*", ""));
        }
        assertEquals(Link.Kind.values().length, looks.size(), looks::toString);
        assertTrue(looks.stream().allMatch(look -> look.contains("stroke-")), looks::toString);
    }

    @Test
    void graphsHaveAnEdgeForEveryWay() throws IOException {
        for (Outline outline : outlines()) {
            Sketch sketch = Sketch.of(outline, Language.ENGLISH);
            int first = sketch.hasPlacement() ? 0 : 1;
            String dot = DotPicture.of(outline);
            assertEquals(sketch.links().size() + first, count(dot, "(?m)^    \"[^\"]+\" -> \"[^\"]+\""), dot);
            assertEquals(0, count(dot, "(?m)^    [^\" ][^\"]* ->|-> [^\"]"), dot);
            for (Link.Kind kind : Link.Kind.values()) {
                long ways = sketch.links().stream().filter(link -> link.kind() == kind).count();
                String style = kind == Link.Kind.ADVANCE ? "bold" : kind == Link.Kind.PLACE ? "solid"
                        : kind == Link.Kind.FALL_BACK ? "dashed" : "dotted";
                String word = kind.word(sketch.words());
                assertEquals(ways, count(dot, "style=" + style + ", label=\"" + word + ": "), dot);
                String arrow = kind == Link.Kind.ADVANCE ? "==>" : kind == Link.Kind.PLACE ? "-->" : "-.->";
                String mermaid = MermaidPicture.of(outline).orElseThrow();
                assertEquals(ways, count(mermaid, " " + arrow + "\\|\"" + word + ": "), mermaid);
            }
        }
    }

    private static long count(String text, String pattern) {
        return Pattern.compile(pattern).matcher(text).results().count();
    }

    @Test
    void aTrailIsALineWithAMarkForEachStepAndItsWordsInItsStage() throws IOException {
        Outline outline = outlines().get(1);
        Trail trail = new Trail("Ida", List.of(new Trail.Step(0, "session 1"), new Trail.Step(1, "session 2"),
                new Trail.Step(0, "session 3"), new Trail.Step(outline.stages().size(), "after 3")));
        String svg = SvgPicture.of(outline, Optional.of(trail));
        assertEquals(3, count(svg, "<path class=\"trail\" d=\"M[0-9]+ [0-9]+V[0-9]+\"/>"), svg);
        assertEquals(4, count(svg, "<circle class=\"stop\""), svg);
        for (int step = 1; step <= 4; step++) {
            String words = trail.steps().get(step - 1).words();
            assertEquals(1, count(svg, "<text class=\"count\"[^>]*>" + step + "</text>"), svg);
            assertEquals(1, count(svg, ">" + step + ": " + words + "</text>"), svg);
        }
        assertEquals(0, count(SvgPicture.of(outline, Optional.empty()), "class=\"trail|class=\"stop\""));
    }
}
