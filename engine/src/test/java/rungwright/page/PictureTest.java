package rungwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.xml.sax.SAXException;
import rungwright.program.Checked;
import rungwright.program.Outline;
import rungwright.text.Language;

/** Pictures of programs: whole documents, in which every name stays text. */
class PictureTest {
    private static final String HOSTILE = "</text><script>alert(1)</script> \"q\" & 'x'";
    private static final String BACK = "    fall back: { when: { reps: 0 }, to: stage first one }\n";
    private static final Pattern BOX =
            Pattern.compile("viewBox=\"0 ([0-9]+) ([0-9]+) ([0-9]+)\" width");
    private static final Pattern WAY = Pattern.compile(
            "<path class=\"way [^\"]*\" d=\"M[0-9]+ ([0-9]+)(?:H[0-9]+)?V([0-9]+)[^\"]*\"");

    @Test
    void everyExampleIsAPictureWithAllItsStages() throws Exception {
        try (Stream<Path> folders = Files.list(Path.of("../spec-examples"))) {
            for (Path folder : folders.filter(Files::isDirectory).toList()) {
                Outline outline = outline(Files.readString(folder.resolve("program.yaml")));
                String svg = SvgPicture.of(outline, Optional.empty());
                assertIsXml(svg);
                outline.stages().forEach(stage -> assertTrue(svg.contains("Stage " + (stage.number() + 1)
                        + ": " + Markup.text(stage.name()).split(" ")[0])));
                assertFalse(svg.replace("http://www.w3.org/2000/svg", "").contains("http"), folder::toString);
            }
        }
    }

    @Test
    void slicesOfAPictureStandOnEachOtherAndShowAllOfIt() throws IOException {
        for (int stages : List.of(0, 8, 28)) {
            for (Layout layout : List.of(Layout.DESK, Layout.PHONE)) {
                String svg = SvgPicture.slices(outline(stages(stages, BACK)), layout, Language.ENGLISH);
                List<MatchResult> boxes = BOX.matcher(svg).results().toList();
                assertEquals(stages + 4, boxes.size());
                int end = 0;
                for (MatchResult box : boxes) {
                    assertEquals(end, Integer.parseInt(box.group(1)));
                    assertTrue(Integer.parseInt(box.group(2)) <= layout.widest(), box::group);
                    end += Integer.parseInt(box.group(3));
                    assertHoldsEveryWay(box, svg);
                }
                int lowest = Pattern.compile(" y=\"([0-9]+)\"").matcher(svg).results()
                        .mapToInt(text -> Integer.parseInt(text.group(1))).max().orElseThrow();
                assertTrue(lowest < end, lowest + " is below " + end);
            }
        }
    }

    /** A way that runs through a slice is drawn in it. */
    private static void assertHoldsEveryWay(MatchResult box, String svg) {
        int top = Integer.parseInt(box.group(1));
        int bottom = top + Integer.parseInt(box.group(3));
        String slice = svg.substring(box.start(), svg.indexOf("</svg>", box.start()));
        long ways = WAY.matcher(svg).results().filter(way -> {
            int from = Integer.parseInt(way.group(1));
            int to = Integer.parseInt(way.group(2));
            boolean seen = Math.min(from, to) + 1 < bottom && Math.max(from, to) > top;
            assertTrue(!seen || slice.contains(way.group()), () -> way.group() + " is not in\n" + slice);
            return seen;
        }).count();
        assertTrue(top == 0 || ways > 0, () -> "no way in\n" + slice);
    }

    @Test
    void rungsOfARunStandWholeInAPictureForAPhone() throws IOException {
        String phone = SvgPicture.slices(outline(Files.readString(Path.of(
                "../spec-examples/knee-extension/program.yaml"))), Layout.PHONE, Language.ENGLISH);
        for (String cell : List.of("20 lb", "25 lb", "…", "100 % of other leg")) {
            assertTrue(phone.contains(">" + cell + "</text>"), cell);
        }
        assertTrue(phone.contains("Everybody: stage 1, knee"));
        String load = run("10 to 40 kg by 2.5");
        assertTrue(load.contains(">12.5 kg</text>") && load.contains(">…</text>"));
        assertFalse(load.contains(">15 kg</text>"));
        assertTrue(load.contains(">40 kg</text>"));
        assertTrue(run("10 to 15 kg by 2.5").contains(">15 kg</text>"));
    }

    private static String run(String rungs) throws IOException {
        return SvgPicture.slices(outline(twoStages("first", "last").replace("stages:\n",
                "ladders:\n  load: { rungs: " + rungs + " }\nstages:\n").replace("'first':\n",
                "'first':\n    ladder: load\n")), Layout.PHONE, Language.ENGLISH);
    }

    @Test
    void aNameFullOfMarkupStaysText() throws Exception {
        Outline outline = outline(twoStages(HOSTILE.replace("'", "''"), "last"));
        String svg = SvgPicture.of(outline, Optional.of(new Trail(HOSTILE,
                List.of(new Trail.Step(0, HOSTILE), new Trail.Step(1, "session 2")))));
        assertIsXml(svg);
        assertFalse(svg.contains("<script"));
        String mermaid = MermaidPicture.of(outline).orElseThrow();
        assertFalse(mermaid.contains("<script"));
        assertTrue(mermaid.contains("#60;script#62;"));
        assertTrue(DotPicture.of(outline).contains("<script>alert(1)</script> \\\"q\\\" &amp; 'x'"));
    }

    @Test
    void measuresAndRungsFullOfMarkupStayText() throws Exception {
        Outline outline = outline("""
                program: Try
                version: 1
                goal: One
                measures: { '<m> & "x" #35; \\': { values: 0 to 30 } }
                ladders: { steps: { rungs: ['<low> & "x"', high] } }
                stages:
                  first:
                    ladder: steps
                    advance: { when: { '<m> & "x" #35; \\': at least 8 } }
                    hold: otherwise
                """);
        for (String svg : List.of(SvgPicture.of(outline, Optional.empty()), "<div>"
                + SvgPicture.slices(outline,
                Layout.PHONE, Language.ENGLISH) + "</div>")) {
            assertIsXml(svg);
            assertTrue(svg.contains("moves on: &lt;m&gt; &amp; &quot;x&quot; #35; \\ at least 8</title>"),
                    svg);
            assertTrue(svg.contains("&lt;low&gt; &amp; &quot;x&quot;</text>"), svg);
        }
        assertTrue(MermaidPicture.of(outline).orElseThrow()
                .contains("#60;m#62; #38; #34;x#34; #35;35#59; #92; at least 8"),
                () -> MermaidPicture.of(outline).orElseThrow());
        assertTrue(DotPicture.of(outline).contains("<m> &amp; \\\"x\\\" #35; \\\\ at least 8"),
                () -> DotPicture.of(outline));
    }

    @Test
    void mermaidKeepsWithinItsLimitsAndSaysSoWhereItCannot() throws IOException {
        String many = MermaidPicture.of(outline(stages(400).replace("stage number",
                "stage " + "x".repeat(70)))).orElseThrow();
        assertTrue(many.length() <= MermaidPicture.MOST_CHARACTERS, () -> many.length() + " characters");
        assertTrue(many.contains("…"), many);
        String most = MermaidPicture.of(outline(stages(496))).orElseThrow();
        assertEquals(MermaidPicture.MOST_EDGES,
                Pattern.compile("-->|==>|-\\.->").matcher(most).results().count());
        assertEquals(Optional.empty(), MermaidPicture.of(outline(stages(497))));
    }

    @Test
    void linesBesideEachOtherNeverShareALaneWhereTheyMeet() {
        List<Lanes.Run> runs = IntStream.range(0, 40)
                .mapToObj(number -> new Lanes.Run(number, number * 7 % 40, number * 13 % 40)).toList();
        Lanes lanes = Lanes.of(runs);
        for (Lanes.Run one : runs) {
            for (Lanes.Run other : runs) {
                boolean meet = Math.max(one.from(), one.to()) >= Math.min(other.from(), other.to())
                        && Math.max(other.from(), other.to()) >= Math.min(one.from(), one.to());
                boolean same = lanes.of(one.number()) == lanes.of(other.number());
                assertFalse(one.number() != other.number() && meet && same, one + " and " + other);
            }
        }
    }

    private static String stages(int number) {
        return stages(number, "");
    }

    /** Every fourth of them with a line more. */
    private static String stages(int number, String more) {
        StringBuilder spec = new StringBuilder(twoStages("first one", "last"));
        for (int stage = 0; stage < number; stage++) {
            spec.append("  stage number ").append(stage)
                    .append(":\n    advance: { when: { reps: at least 8 } }\n    hold: otherwise\n")
                    .append(stage % 4 == 3 ? more : "");
        }
        return spec.toString();
    }

    private static String twoStages(String first, String second) {
        return """
                program: Try
                version: 1
                goal: One
                cautions: [Ask first]
                measures: { reps: { values: 0 to 30 } }
                stages:
                  '%s':
                    advance: { when: { reps: at least 8 } }
                    hold: otherwise
                  %s:
                    advance: { when: { reps: at least 8 } }
                    fall back: { when: { reps: under 3 }, to: start }
                    hold: otherwise
                """.formatted(first, second);
    }

    private static Outline outline(String spec) {
        return Checked.read(spec).outline().orElseThrow();
    }

    private static void assertIsXml(String svg) throws ParserConfigurationException, IOException {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        try {
            factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg.getBytes(
                    StandardCharsets.UTF_8)));
        } catch (SAXException e) {
            throw new AssertionError(svg, e);
        }
    }
}
