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
    private static final int TITLE = 34;
    private static final int TITLE_LINE = 24;
    private static final Letters HEAD = new Letters(19, true);

    private final Layout layout;
    private final Sketch sketch;
    private final Optional<Trail> trail;
    private final List<Panel> panels = new ArrayList<>();
    private final List<Link> sideLinks = new ArrayList<>();
    private final Drawing drawing = new Drawing();
    private final Legend legend;
    private Lanes left = Lanes.of(List.of());
    private Lanes right = Lanes.of(List.of());
    private int apart;
    private int boxLeft;
    private int width;
    private int height;

    private SvgPicture(Layout layout, Sketch sketch, Optional<Trail> trail) {
        this.layout = layout;
        this.sketch = sketch;
        this.trail = trail;
        this.legend = Legend.of(layout, sketch);
    }

    /** The picture in English. */
    public static String of(Outline outline, Optional<Trail> trail) {
        return of(outline, trail, Language.ENGLISH);
    }

    /** The picture of a program, which need not be proven; with a way through it, if one is given. */
    public static String of(Outline outline, Optional<Trail> trail, Language language) {
        SvgPicture picture = new SvgPicture(Layout.WHOLE, Sketch.of(outline, language), trail);
        picture.draw();
        return picture.whole();
    }

    /**
     * The picture for a page, in slices that stand on each other without a seam: a panel each, so that paper
     * can end between two.
     */
    static String slices(Outline outline, Layout layout, Language language) {
        SvgPicture picture = new SvgPicture(layout, Sketch.of(outline, language), Optional.empty());
        picture.draw();
        return picture.sliced();
    }

    private void draw() {
        place();
        route();
        panels.forEach(panel -> drawing.add(panel.top(), panel.bottom(), panel.svg(layout, boxLeft)));
        for (int panel = 1; panel < panels.size(); panel++) {
            straight(panels.get(panel - 1), panels.get(panel));
        }
        for (int link = 0; link < sideLinks.size(); link++) {
            aside(link);
        }
        trail.ifPresent(this::trail);
        drawing.add(legendTop(), height, legend.svg(boxLeft, legendTop()));
    }

    private int legendTop() {
        return height - legend.height();
    }

    /** Puts the panels one below the other. */
    private void place() {
        int y = layout.margin() + (layout.told() ? TITLE + (head().size() - 1) * TITLE_LINE : 0);
        for (Panel panel : new Panels(layout, sketch, trail).all()) {
            panels.add(panel.at(y));
            y += panel.height() + layout.gap();
        }
        height = y + legend.height();
    }

    /** Gives every way that is not straight down a lane of its own, to the left or to the right. */
    private void route() {
        sketch.links().stream().filter(link -> !isStraight(link)
                && sideLinks.stream().noneMatch(link::runsWith)).forEach(sideLinks::add);
        left = Lanes.of(runs(false));
        right = Lanes.of(runs(true));
        apart = layout.apart(left.count() + right.count());
        boxLeft = layout.margin() + beside(left.count());
        int trailRoom = trail.isPresent() ? 2 * layout.lane() : 0;
        width = boxLeft + layout.box() + beside(right.count()) + trailRoom + layout.margin();
    }

    /** How much room lanes need, and a little more where there are any or a trail may come. */
    private int beside(int lanes) {
        return lanes == 0 ? layout.told() ? layout.first() : 0 : layout.first() + lanes * apart;
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

    private String whole() {
        String title = Markup.text(sketch.title());
        return "<svg xmlns=\"http://www.w3.org/2000/svg\"" + box(0, height)
                + " role=\"graphics-document document\" aria-labelledby=\"picture-title\">\n"
                + "<title id=\"picture-title\">" + title + "</title>\n" + PictureStyle.CSS
                + PictureStyle.tip(layout.tip()) + "<rect class=\"paper\" width=\"100%\" height=\"100%\"/>\n"
                + headed() + drawing.all() + "</svg>\n";
    }

    /** The program's name in lines, as wide as the panels. */
    private List<String> head() {
        return HEAD.lines(sketch.title(), layout.box());
    }

    private String headed() {
        StringBuilder lines = new StringBuilder();
        List<String> head = head();
        for (int line = 0; line < head.size(); line++) {
            lines.append("<text class=\"head\" x=\"").append(boxLeft).append("\" y=\"")
                    .append(layout.margin() + 14 + line * TITLE_LINE).append("\">")
                    .append(Markup.text(head.get(line))).append("</text>\n");
        }
        return lines.toString();
    }

    private String sliced() {
        StringBuilder svg = new StringBuilder();
        int top = 0;
        for (Panel panel : panels) {
            boolean last = panel.equals(panels.get(panels.size() - 1));
            int bottom = last ? height : panel.bottom() + 1;
            svg.append("<svg").append(box(top, bottom)).append(" role=\"group\">\n")
                    .append(top == 0 ? PictureStyle.tip(layout.tip()) : "")
                    .append(drawing.between(top, bottom)).append("</svg>\n");
            top = bottom;
        }
        return svg.toString();
    }

    private String box(int top, int bottom) {
        int high = bottom - top;
        return " viewBox=\"0 " + top + " " + width + " " + high + "\" width=\"" + width + "\" height=\""
                + high
                + "\"";
    }

    private void straight(Panel from, Panel to) {
        Optional<Link> link = sketch.links().stream().filter(this::isStraight)
                .filter(each -> each.from() == from.part() && each.to() == to.part()).findFirst();
        boolean entry = from.part() == Sketch.START && !sketch.hasPlacement();
        if (link.isEmpty() && !entry) {
            return;
        }
        Link.Kind kind = link.map(Link::kind).orElse(Link.Kind.PLACE);
        String words = link.map(sketch::words).orElse("");
        int x = boxLeft + layout.box() / 2;
        drawing.add(from.bottom() + 1, to.top(), path("M" + x + " " + from.bottom() + "V" + (to.top() - 8),
                kind,
                words)
                + label(x + 10, from.bottom() + layout.gap() / 2 + 3, kind.word(sketch.words())));
    }

    private void aside(int number) {
        Link link = sideLinks.get(number);
        boolean onward = isOnward(link);
        int lane = (onward ? right : left).of(number);
        int edge = onward ? boxLeft + layout.box() : boxLeft;
        int away = (onward ? 1 : -1) * (layout.first() + lane * apart);
        int from = leaves(number);
        int to = arrives(number);
        int tip = edge + (onward ? 8 : -8);
        drawing.add(from, to, path("M" + edge + " " + from + "H" + (edge + away) + "V" + to + "H" + tip,
                link.kind(), sketch.words(link)));
    }

    private String path(String way, Link.Kind kind, String words) {
        return "<path class=\"way " + kind.look() + "\" d=\"" + way + "\" marker-end=\"url(#" + layout.tip()
                + ")\"><title>" + kind.word(sketch.words())
                + (words.isEmpty() ? "" : ": " + Markup.text(words)) + "</title></path>\n";
    }

    private static String label(int x, int y, String words) {
        return "<text class=\"small\" x=\"" + x + "\" y=\"" + y + "\">" + words + "</text>\n";
    }

    /** Joins the panels that a trail visits one after the other, on the far right, numbered. */
    private void trail(Trail shown) {
        int x = boxLeft + layout.box() + beside(right.count()) + layout.lane() / 2;
        StringBuilder svg = new StringBuilder();
        StringBuilder counts = new StringBuilder();
        for (int step = 0; step < shown.steps().size(); step++) {
            int y = trailHeight(shown, step);
            if (step > 0) {
                svg.append("<path class=\"trail\" d=\"M").append(x).append(' ')
                        .append(trailHeight(shown, step - 1)).append('V').append(y).append("\"/>\n");
            }
            svg.append("<path class=\"trail-tick\" d=\"M").append(x).append(' ').append(y).append('H')
                    .append(boxLeft + layout.box() + layout.lane() / 2).append("\"/>\n");
            counts.append("<circle class=\"stop\" cx=\"").append(x).append("\" cy=\"").append(y)
                    .append("\" r=\"9\"/><text class=\"count\" x=\"").append(x).append("\" y=\"")
                    .append(y + 4).append("\">").append(step + 1).append("</text>\n");
        }
        drawing.add(0, height, svg.append(counts).toString());
    }

    private int trailHeight(Trail shown, int step) {
        Panel at = panel(shown.steps().get(step).stage());
        long before = shown.steps().subList(0, step).stream()
                .filter(each -> each.stage() == shown.steps().get(step).stage()).count();
        return at.top() + Math.min(at.height() - 10, 12 + (int) before * 21);
    }
}
