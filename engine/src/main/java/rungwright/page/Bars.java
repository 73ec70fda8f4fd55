package rungwright.page;

import java.util.List;
import rungwright.journal.Cohort;
import rungwright.journal.Spell;
import rungwright.text.ReportTable;
import rungwright.text.Words;

/**
 * A bar for each row of a table, all in one measure, of parts that stand beside each other.
 *
 * @param rows for each row the parts, each a number of things
 * @param meaning what the parts are, in a sentence after others
 */
record Bars(List<List<Integer>> rows, String meaning) {
    private static final int WIDTH = 1000;
    private static final int HEIGHT = 60;

    /** Those of a table; none where it has none. */
    static Bars of(ReportTable table, Cohort cohort, Words words) {
        return switch (table.file()) {
            case "rules" -> new Bars(cohort.rules().stream()
                    .map(rule -> List.of(rule.use().fired(), rule.use().counted())).toList(),
                    " " + words.say("bars.rules"));
            case "stages" -> new Bars(cohort.stages().stream().map(stage -> parts(stage.sessions())).toList(),
                    " " + words.say("bars.stages"));
            case "rungs" -> new Bars(cohort.rungs().stream().map(rung -> parts(rung.sessions())).toList(),
                    " " + words.say("bars.stages"));
            default -> new Bars(List.of(), "");
        };
    }

    private static List<Integer> parts(Spell spell) {
        return List.of(spell.advances(), spell.holds(), spell.fallBacks(), spell.stops());
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    String svg(int row) {
        int most = Math.max(1, rows.stream().mapToInt(Bars::sum).max().orElse(1));
        StringBuilder svg = new StringBuilder("<svg viewBox=\"0 0 " + WIDTH + " " + HEIGHT
                + "\" preserveAspectRatio=\"none\" aria-hidden=\"true\">");
        int before = 0;
        for (int part = 0; part < rows.get(row).size(); part++) {
            int after = before + rows.get(row).get(part);
            int from = before * WIDTH / most;
            if (after > before) {
                svg.append("<rect class=\"p").append(part).append("\" x=\"").append(from)
                        .append("\" y=\"0\" width=\"")
                        .append(Math.max(1, after * WIDTH / most - from)).append("\" height=\"")
                        .append(HEIGHT)
                        .append("\"/>");
            }
            before = after;
        }
        return svg.append("</svg>").toString();
    }

    private static int sum(List<Integer> parts) {
        return parts.stream().mapToInt(Integer::intValue).sum();
    }
}
