package rungwright.page;

import java.math.BigDecimal;
import java.util.List;
import rungwright.finding.Shown;
import rungwright.journal.Cohort;
import rungwright.journal.KaplanMeier;
import rungwright.journal.Limits;
import rungwright.journal.Member;
import rungwright.measure.Ratio;
import rungwright.text.Words;

/** How large a share of each cohort had got to the goal by when, drawn as steps that rise. */
final class StepPlot {
    private static final int LEFT = 108;
    private static final int RIGHT = 408;
    private static final int TOP = 14;
    private static final int BOTTOM = 214;
    private static final int AXIS = 232;
    private static final int HEIGHT = 256;
    private static final int WIDTH = 420;
    private static final int TICK = 5;
    private static final int MOST_NUMBERS = 8;

    private final List<Cohort> cohorts;
    private final Member.Count count;
    private final Words words;
    private final long longest;
    private final StringBuilder svg = new StringBuilder();

    StepPlot(List<Cohort> cohorts, Member.Count count, Words words) {
        this.cohorts = cohorts;
        this.count = count;
        this.words = words;
        this.longest = Math.max(1, cohorts.stream().flatMap(each -> times(each).steps().stream())
                .mapToLong(KaplanMeier.Step::time).max().orElse(1));
    }

    private KaplanMeier times(Cohort cohort) {
        return cohort.goal().in(count);
    }

    String svg() {
        svg.append("<svg class=\"plot\" viewBox=\"0 0 ").append(WIDTH).append(' ').append(HEIGHT)
                .append("\" role=\"img\">\n<title>").append(Html.escaped(title())).append("</title>\n");
        shares();
        numbers();
        if (cohorts.size() == 1) {
            band(times(cohorts.get(0)));
        }
        for (int number = 0; number < cohorts.size(); number++) {
            way(times(cohorts.get(number)), number);
        }
        return svg.append("</svg>\n").toString();
    }

    private String title() {
        String title = words.say("way.title." + count.word());
        for (Cohort cohort : cohorts) {
            title = cohort.title().isEmpty() ? words.say("way.single", title, got(times(cohort)))
                    : words.say("way.several", title, Shown.text(cohort.title()), got(times(cohort)));
        }
        return title;
    }

    private String got(KaplanMeier times) {
        String arrived = Integer.toString(times.arrived());
        String all = Integer.toString(times.waits().size());
        return times.median().map(time -> words.say("way.got", arrived, all, Long.toString(time)))
                .orElseGet(() -> words.say("way.gotNot", arrived, all));
    }

    private void shares() {
        String[] shares = words.say("way.shares").split("\\|");
        int parts = shares.length - 1;
        for (int part = 0; part <= parts; part++) {
            int y = y(Ratio.of(parts - part, parts));
            line(part == 0 ? "axis" : "grid", LEFT, y, RIGHT, y);
            text("share", LEFT - TICK, y + TICK - 1, shares[part]);
        }
    }

    private void numbers() {
        long each = distance();
        for (long time = 0; time <= longest; time += each) {
            line("axis", x(time), BOTTOM, x(time), BOTTOM + TICK);
            text("time", x(time), AXIS, Long.toString(time));
        }
        text("unit", RIGHT, HEIGHT - TICK, words.say("way.fromStart." + count.word()));
    }

    /** 1, 2, 5, 10, 20, 50 and so on, so that there are not too many. */
    private long distance() {
        long ten = 1;
        while (true) {
            for (long step : new long[] {1, 2, 5}) {
                if (longest / (step * ten) <= MOST_NUMBERS) {
                    return step * ten;
                }
            }
            ten *= 10;
        }
    }

    private void way(KaplanMeier times, int number) {
        if (times.waits().isEmpty()) {
            return;
        }
        StringBuilder path = new StringBuilder("M" + LEFT + " " + BOTTOM);
        StringBuilder ticks = new StringBuilder();
        for (KaplanMeier.Step step : times.steps()) {
            int y = y(step.underWay());
            path.append("H").append(x(step.time())).append("V").append(y);
            if (step.lost() > 0) {
                ticks.append("M").append(x(step.time())).append(' ').append(y - TICK).append("v")
                        .append(2 * TICK);
            }
        }
        svg.append("<path class=\"way g").append(number).append("\" d=\"").append(path).append("\"/>\n");
        if (ticks.length() > 0) {
            svg.append("<path class=\"lost g").append(number).append("\" d=\"").append(ticks)
                    .append("\"/>\n");
        }
    }

    /** The limits of the one way that is drawn: along the upper ones, and back along the lower ones. */
    private void band(KaplanMeier times) {
        List<KaplanMeier.Step> steps = times.steps();
        List<KaplanMeier.Step> known = steps.stream().filter(step -> step.limits().isPresent()).toList();
        if (known.isEmpty()) {
            return;
        }
        int end = x(steps.get(steps.size() - 1).time());
        StringBuilder above = new StringBuilder();
        StringBuilder below = new StringBuilder();
        for (int number = 0; number < known.size(); number++) {
            Limits limits = known.get(number).limits().orElseThrow();
            int from = x(known.get(number).time());
            int to = number + 1 < known.size() ? x(known.get(number + 1).time()) : end;
            above.append(number == 0 ? "M" : "L").append(from).append(' ').append(y(limits.low()))
                    .append("H").append(to);
            below.insert(0, "L" + to + " " + y(limits.high()) + "H" + from);
        }
        svg.append("<path class=\"band\" d=\"").append(above).append(below).append("Z\"/>\n");
    }

    private int y(BigDecimal underWay) {
        return y(Ratio.of(underWay));
    }

    private int x(long time) {
        return LEFT + (int) (time * (RIGHT - LEFT) / longest);
    }

    private int y(Ratio underWay) {
        return TOP + underWay.times(BOTTOM - TOP).floor().intValueExact();
    }

    private void line(String kind, int x, int y, int toX, int toY) {
        svg.append("<path class=\"").append(kind).append("\" d=\"M").append(x).append(' ').append(y)
                .append("L")
                .append(toX).append(' ').append(toY).append("\"/>\n");
    }

    private void text(String kind, int x, int y, String words) {
        svg.append("<text class=\"").append(kind).append("\" x=\"").append(x).append("\" y=\"").append(y)
                .append("\">").append(Html.escaped(words)).append("</text>\n");
    }
}
