package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import rungwright.compare.Migration;
import rungwright.finding.Shown;

/** What was done to carry people over to a new version, in words. */
public final class MigrationText {
    private static final int WIDEST = 80;

    private MigrationText() {
    }

    /**
     * A line a person who is left or placed, and what it comes to.
     *
     * @param written whether it is in the journals now
     */
    public static List<String> lines(List<Migration> people, boolean written, Colours colours) {
        List<String> lines = new ArrayList<>();
        lines.add(colours.strong(written ? "Written into the journals" : "Nothing is written"));
        for (Migration each : people) {
            lines.addAll(Wrap.after("- ", Shown.text(each.name()) + ": " + what(each, written), WIDEST));
        }
        long left = people.stream().filter(each -> !each.isFine()).count();
        if (!written) {
            lines.addAll(Wrap.lines((people.size() - left) + " of " + people.size()
                    + " can be carried over; say --yes to do it.", WIDEST));
        } else {
            lines.addAll(Wrap.lines((people.size() - left) + " of " + people.size()
                    + " follow the new version now. To take an entry back: log OLD JOURNAL correct N"
                    + " --withdraw, with the old spec.", WIDEST));
        }
        return lines;
    }

    private static String what(Migration each, boolean written) {
        String entry = each.entry().map(number -> ", entry " + number).orElse("");
        return switch (each.kind()) {
            case CARRIED -> (written ? "carried over" : "would be carried over") + entry;
            case PLACED -> (written ? "carried over and moved by the coach"
                    : "would be carried over and moved by the coach") + entry;
            case ALREADY -> "carried over before" + entry;
            case LEFT -> "left as they are: " + each.why().orElse("");
        };
    }
}
