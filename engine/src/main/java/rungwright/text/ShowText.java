package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwright.finding.Shown;
import rungwright.measure.BuiltIn;
import rungwright.program.DecisionTable;
import rungwright.program.Ladder;
import rungwright.program.Outline;
import rungwright.program.Program;
import rungwright.program.RuleList;
import rungwright.program.Stage;
import rungwright.spec.Spec;

/**
 * A program in plain words within 80 columns, so that a coach can read it aloud: what it is and its cautions,
 * what is logged, the rules that outrank others, and each stage with its decision table.
 */
public final class ShowText {
    private static final int WIDEST = 80;

    private final Spec spec;
    private final Program program;
    private final Outline outline;
    private final Colours colours;
    private final List<String> lines = new ArrayList<>();

    private ShowText(Spec spec, Program program, Colours colours) {
        this.spec = spec;
        this.program = program;
        this.outline = program.outline();
        this.colours = colours;
    }

    /** The whole program; {@code spec} is what it was read from, for formulas as the coach wrote them. */
    public static List<String> lines(Spec spec, Program program, Colours colours) {
        ShowText show = new ShowText(spec, program, colours);
        show.head();
        show.asked();
        show.sections();
        program.outline().stages().forEach(show::stage);
        return List.copyOf(show.lines);
    }

    private void head() {
        lines.add(colours.strong(
                Shown.whole(outline.name()) + ", version " + Shown.whole(outline.version())));
        add("Goal: ", outline.goal());
        outline.audience().ifPresent(audience -> add("For: ", audience));
        listed("Cautions", outline.cautions());
        listed("Sources", outline.sources());
    }

    private void listed(String heading, List<String> items) {
        if (!items.isEmpty()) {
            heading(heading);
            items.forEach(item -> add("- ", item));
        }
    }

    private void asked() {
        if (!outline.facts().isEmpty()) {
            heading("What is known about a trainee");
            outline.facts().forEach(fact -> add("- ", AskedText.of(fact)));
        }
        heading("What is logged");
        outline.measures().forEach(measure -> add("- ", AskedText.of(measure)));
        outline.workedOut().forEach(measure -> add("- ", AskedText.of(measure, spec)));
        Stream.of(BuiltIn.values()).filter(this::isAsked)
                .forEach(counted -> add("- ", AskedText.of(counted)));
    }

    private boolean isAsked(BuiltIn counted) {
        return outline.axes().stream().anyMatch(axis -> axis.quantity().name().equals(counted.word()));
    }

    private void sections() {
        section("When to stop", "A stop rule comes before every other rule. Once a professional has cleared"
                + " the trainee, they go on where the last column says.", outline.stop(),
                DecisionTable.ofStop(program));
        DecisionTable.ofBreak(program).ifPresent(table -> section("After a break",
                "Looked at before the session that follows it, which is then judged in the place that gives.",
                outline.afterABreak().orElseThrow(), table));
        section("In every stage", "These rules come before a stage's own.", outline.everyStage(),
                DecisionTable.ofEveryStage(program));
        DecisionTable.ofPlacement(program).ifPresent(table -> {
            heading("Where a new trainee starts");
            outline.assessments().forEach(assessment -> add("- ", AskedText.of(assessment)));
            lines.addAll(new TableText(outline, Optional.empty()).lines(table));
        });
    }

    private void section(String heading, String what, RuleList rules, DecisionTable table) {
        if (rules.rules().isEmpty()) {
            return;
        }
        heading(heading);
        add("", what);
        where(table);
        lines.addAll(new TableText(outline, Optional.empty()).lines(table));
    }

    private void where(DecisionTable table) {
        if (!table.where().isEmpty()) {
            add("", "Left by the rules above: " + ClauseText.all(table.where()) + ".");
        }
    }

    private void stage(Stage stage) {
        heading("Stage " + (stage.number() + 1) + " of " + outline.stages().size() + ": "
                + Shown.text(stage.name()));
        stage.prescription().map(PrescriptionText::phrases)
                .ifPresent(phrases -> phrases.forEach(phrase -> add("- ", phrase)));
        if (!stage.ladder().equals(Ladder.SINGLE)) {
            add("Rungs, easiest first: ", LadderText.of(stage.ladder()));
        }
        DecisionTable table = DecisionTable.ofStage(program, stage.number());
        where(table);
        lines.addAll(new TableText(outline, Optional.of(stage)).lines(table));
    }

    private void heading(String text) {
        lines.add("");
        lines.add(colours.strong(text));
        lines.add("-".repeat(Math.min(WIDEST, Width.of(text))));
    }

    /** Words after a lead, escaped and wrapped; what is escaped already stays as it is. */
    private void add(String lead, String text) {
        lines.addAll(Wrap.after(lead, Shown.whole(text), WIDEST));
    }
}
