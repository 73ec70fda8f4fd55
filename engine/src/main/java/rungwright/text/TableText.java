package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.program.DecisionTable;
import rungwright.program.Outline;
import rungwright.program.Rule;
import rungwright.program.Stage;

/**
 * A list of rules as a table of three columns within 80: when, what happens, where it leads. Under a row
 * stands what it says to the trainee.
 */
final class TableText {
    private static final int[] WIDTHS = {35, 17, 20};
    private static final String INDENT = "  ";
    private static final String BETWEEN = " | ";
    private static final int WIDEST = 80;

    private final Outline outline;
    private final Optional<Stage> stage;
    private final Wording wording;
    private final Words words;

    /** For the rules of a stage, or of a section where there is none. */
    TableText(Outline outline, Optional<Stage> stage, Wording wording) {
        this.outline = outline;
        this.stage = stage;
        this.wording = wording;
        this.words = wording.language().words("show");
    }

    List<String> lines(DecisionTable table) {
        List<String> lines = new ArrayList<>(row(words.say("when"), words.say("happens"),
                words.say("leads")));
        for (DecisionTable.Row row : table.rows()) {
            lines.add(rule());
            Rule rule = row.rule();
            lines.addAll(row(new ClauseText(wording).row(row), what(rule),
                    new TargetText(outline, stage, rule, wording).words()));
            rule.say().ifPresent(say -> lines.addAll(
                    Wrap.after(INDENT + words.say("says") + " ", Shown.whole(say), WIDEST)));
        }
        lines.add(rule());
        return lines;
    }

    /** The kind and the rule's own name, where it has one: {@code advance: Less help}. */
    private String what(Rule rule) {
        boolean named = !rule.label().matches("(.*: )?" + rule.kind().word() + "( \\d+)?");
        String name = named ? ": " + Shown.text(rule.label()) : "";
        return switch (rule.kind()) {
            case ADVANCE, FALL_BACK, HOLD -> wording.rules().say("kind." + rule.kind().word()) + name;
            case STOP, BREAK, PLACE -> words.say("what." + rule.kind().word()) + name;
        };
    }

    private static String rule() {
        StringBuilder line = new StringBuilder(INDENT);
        for (int column = 0; column < WIDTHS.length; column++) {
            line.append(column == 0 ? "" : "-+-").append("-".repeat(WIDTHS[column]));
        }
        return line.toString();
    }

    private static List<String> row(String... cells) {
        List<List<String>> columns = new ArrayList<>();
        int height = 0;
        for (int column = 0; column < WIDTHS.length; column++) {
            columns.add(Wrap.lines(cells[column], WIDTHS[column]));
            height = Math.max(height, columns.get(column).size());
        }
        List<String> lines = new ArrayList<>();
        for (int at = 0; at < height; at++) {
            lines.add(line(columns, at));
        }
        return lines;
    }

    private static String line(List<List<String>> columns, int at) {
        StringBuilder line = new StringBuilder(INDENT);
        for (int column = 0; column < WIDTHS.length; column++) {
            String cell = at < columns.get(column).size() ? columns.get(column).get(at) : "";
            line.append(column == 0 ? "" : BETWEEN).append(cell)
                    .append(" ".repeat(Math.max(0, WIDTHS[column] - Width.of(cell))));
        }
        return line.toString().stripTrailing();
    }
}
