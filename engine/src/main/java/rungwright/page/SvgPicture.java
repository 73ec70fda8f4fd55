package rungwright.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rungwright.program.Outline;
import rungwright.text.Language;

/**
 * A program as a picture: its stages from top to bottom, each with its rungs and moves, the ways on straight
 * down or on the right, the ways back on the left. Ways differ by their lines and say their kind, so that
 * nothing depends on colour. One SVG that asks for nothing else, light or dark as its reader has it; its text
 * can be selected and is read aloud.
 */
public final class SvgPicture {
    private static final int LANE = 16;
    private static final int GAP = 46;
    private static final int MARGIN = 24;

    private final Sketch sketch;
    private final Optional<Trail> trail;
    private final List<Panel> panels = new ArrayList<>();
    private final List<Link> sideLinks = new ArrayList<>();
    private final StringBuilder svg = new StringBuilder();
    private Lanes left = Lanes.of(List.of());
    private Lanes right = Lanes.of(List.of());
    private int boxLeft;
    private int width;
    private int height;

    private SvgPicture(Sketch sketch, Optional<Trail> trail) {
        this.sketch = sketch;
        this.trail = trail;
    }

    /** The picture in English. */
    public static String of(Outline outline, Optional<Trail> trail) {
        return of(outline, trail, Language.ENGLISH);
    }

    /** The picture of a program, which need not be proven; with a way through it, if one is given. */
    public static String of(Outline outline, Optional<Trail> trail, Language language) {
        return new SvgPicture(Sketch.of(outline, language), trail).draw();
    }

    private String draw() {
        place();
        route();
        head();
        panels.forEach(panel -> svg.append(panel.svg(boxLeft)));
        for (int panel = 1; panel < panels.size(); panel++) {
            straight(panels.get(panel - 1), panels.get(panel));
        }
        for (int link = 0; link < sideLinks.size(); link++) {
            aside(link);
        }
        trail.ifPresent(this::trail);
        legend();
        return svg.append("</svg>\n").toString();
    }

    /** Puts the panels one below the other. */
    private void place() {
        int y = MARGIN + 34;
        List<Panel> wanted = new ArrayList<>();
        if (!sketch.everywhere().isEmpty()) {
            wanted.add(Panel.everywhere(sketch));
        }
        wanted.add(Panel.start(sketch));
        sketch.stages().forEach(stage -> wanted.add(Panel.stage(stage, sketch.words(), trail)));
        wanted.add(Panel.goal(sketch, trail));
        for (Panel panel : wanted) {
            panels.add(panel.at(y));
            y += panel.height() + GAP;
        }
        height = y;
    }

    /** Gives every way that is not straight down a lane of its own, to the left or to the right. */
    private void route() {
        for (Link link : sketch.links()) {
            if (!isStraight(link)) {
                sideLinks.add(link);
            }
        }
        left = Lanes.of(runs(false));
        right = Lanes.of(runs(true));
        boxLeft = MARGIN + (left.count() + 1) * LANE;
        int trailRoom = trail.isPresent() ? 2 * LANE : 0;
        width = boxLeft + Panel.WIDTH + (right.count() + 1) * LANE + trailRoom + MARGIN;
    }

    private List<Lanes.Run> runs(boolean onward) {
        List<Lanes.Run> runs = new ArrayList<>();
        for (int link = 0; link < sideLinks.size(); link++) {
            if (isOnward(sideLinks.get(link)) == onward) {
                runs.add(new Lanes.Run(link, leaves(link), arrives(link)));
            }
        }
        return runs;
    }

    private boolean isOnward(Link link) {
        return link.kind() == Link.Kind.ADVANCE || link.kind() == Link.Kind.PLACE;
    }

    private boolean isStraight(Link link) {
        return isOnward(link) && link.to() == link.from() + 1;
    }

    private Panel panel(int part) {
        return panels.stream().filter(each -> each.part() == part).findFirst().orElse(panels.get(0));
    }

    /**
     * The height at which a way leaves its panel: below the middle, each a little lower; of ways onward those
     * that lead farthest leave first, so that they do not cross those nearer by.
     */
    private int leaves(int number) {
        Link link = sideLinks.get(number);
        Panel from = panel(link.from());
        List<Integer> beside = IntStream.range(0, sideLinks.size()).boxed()
                .filter(each -> sideLinks.get(each).from() == link.from()
                        && isOnward(sideLinks.get(each)) == isOnward(link))
                .sorted(isOnward(link) ? Comparator.comparing((Integer each) -> -sideLinks.get(each).to())
                        : Comparator.naturalOrder()).toList();
        int room = from.height() / 2 - 14;
        return from.top() + from.height() / 2 + 6
                + beside.indexOf(number) * Math.min(9 * beside.size(), room) / beside.size();
    }

    /** The height at which it arrives: above the middle, each a little lower. */
    private int arrives(int number) {
        Panel to = panel(sideLinks.get(number).to());
        long before = sideLinks.subList(0, number).stream()
                .filter(link -> link.to() == sideLinks.get(number).to()).count();
        return to.top() + Math.min(to.height() - 8, 12 + (int) before * 9);
    }

    private void head() {
        String title = Markup.text(sketch.title());
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ").append(width).append(' ')
                .append(height + Legend.HEIGHT).append("\" width=\"").append(width).append("\" height=\"")
                .append(height + Legend.HEIGHT)
                .append("\" role=\"graphics-document document\" aria-labelledby=\"picture-title\">\n")
                .append("<title id=\"picture-title\">").append(title).append("</title>\n")
                .append(PictureStyle.CSS).append(PictureStyle.MARKERS)
                .append("<rect class=\"paper\" width=\"100%\" height=\"100%\"/>\n")
                .append("<text class=\"head\" x=\"").append(boxLeft).append("\" y=\"").append(MARGIN + 14)
                .append("\">").append(title).append("</text>\n");
    }

    private void straight(Panel from, Panel to) {
        List<Link> links = sketch.links().stream().filter(this::isStraight)
                .filter(link -> link.from() == from.part() && link.to() == to.part()).toList();
        boolean entry = from.part() == Sketch.START && !sketch.hasPlacement();
        if (links.isEmpty() && !entry) {
            return;
        }
        Link.Kind kind = entry ? Link.Kind.PLACE : links.get(0).kind();
        String words = links.stream().map(Link::words)
                .reduce((all, next) -> sketch.words().say("orElse", all, next)).orElse("");
        int x = boxLeft + Panel.WIDTH / 2;
        path("M" + x + " " + (from.top() + from.height()) + "V" + (to.top() - 8), kind, words);
        label(x + 10, from.top() + from.height() + GAP / 2 + 3, kind.word(sketch.words()));
    }

    private void aside(int number) {
        Link link = sideLinks.get(number);
        boolean onward = isOnward(link);
        int lane = (onward ? right : left).of(number);
        int edge = onward ? boxLeft + Panel.WIDTH : boxLeft;
        int away = (onward ? 1 : -1) * (lane + 1) * LANE;
        int from = leaves(number);
        int to = arrives(number);
        int tip = edge + (onward ? 8 : -8);
        path("M" + edge + " " + from + "H" + (edge + away) + "V" + to + "H" + tip, link.kind(), link.words());
    }

    private void path(String way, Link.Kind kind, String words) {
        svg.append("<path class=\"way ").append(kind.look()).append("\" d=\"").append(way)
                .append("\" marker-end=\"url(#arrow)\"><title>").append(kind.word(sketch.words()))
                .append(words.isEmpty() ? "" : ": " + Markup.text(words)).append("</title></path>\n");
    }

    private void label(int x, int y, String words) {
        svg.append("<text class=\"small\" x=\"").append(x).append("\" y=\"").append(y).append("\">")
                .append(words).append("</text>\n");
    }

    /** Joins the panels that a trail visits one after the other, on the far right, numbered. */
    private void trail(Trail shown) {
        int x = boxLeft + Panel.WIDTH + (right.count() + 1) * LANE + LANE / 2;
        StringBuilder counts = new StringBuilder();
        for (int step = 0; step < shown.steps().size(); step++) {
            int y = trailHeight(shown, step);
            if (step > 0) {
                svg.append("<path class=\"trail\" d=\"M").append(x).append(' ')
                        .append(trailHeight(shown, step - 1)).append('V').append(y).append("\"/>\n");
            }
            svg.append("<path class=\"trail-tick\" d=\"M").append(x).append(' ').append(y).append('H')
                    .append(boxLeft + Panel.WIDTH + LANE / 2).append("\"/>\n");
            counts.append("<circle class=\"stop\" cx=\"").append(x).append("\" cy=\"").append(y)
                    .append("\" r=\"9\"/><text class=\"count\" x=\"").append(x).append("\" y=\"")
                    .append(y + 4).append("\">").append(step + 1).append("</text>\n");
        }
        svg.append(counts);
    }

    private int trailHeight(Trail shown, int step) {
        Panel at = panel(shown.steps().get(step).stage());
        long before = shown.steps().subList(0, step).stream()
                .filter(each -> each.stage() == shown.steps().get(step).stage()).count();
        return at.top() + Math.min(at.height() - 10, 12 + (int) before * 21);
    }

    private void legend() {
        svg.append(Legend.svg(boxLeft, height, sketch));
    }
}
