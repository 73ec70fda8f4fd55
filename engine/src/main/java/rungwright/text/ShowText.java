package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Shown;
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
    private final Wording wording;
    private final Words words;
    private final List<String> lines = new ArrayList<>();

    private ShowText(Spec spec, Program program, Language language, Colours colours) {
        this.spec = spec;
        this.program = program;
        this.outline = program.outline();
        this.colours = colours;
        this.wording = Wording.of(outline, language);
        this.words = language.words("show");
    }

    /** The whole program in English. */
    public static List<String> lines(Spec spec, Program program, Colours colours) {
        return lines(spec, program, Language.ENGLISH, colours);
    }

    /** The whole program; {@code spec} is what it was read from, for formulas as the coach wrote them. */
    public static List<String> lines(Spec spec, Program program, Language language, Colours colours) {
        ShowText show = new ShowText(spec, program, language, colours);
        show.head();
        show.asked();
        show.sections();
        program.outline().stages().forEach(show::stage);
        return List.copyOf(show.lines);
    }

    private void head() {
        lines.add(colours.strong(words.say("program", Shown.whole(outline.name()), Shown.whole(
                outline.version()))));
        add(words.say("goal") + " ", outline.goal());
        outline.audience().ifPresent(audience -> add(words.say("for") + " ", audience));
        listed(words.say("cautions"), outline.cautions());
        listed(words.say("sources"), outline.sources());
    }

    private void listed(String heading, List<String> items) {
        if (!items.isEmpty()) {
            heading(heading);
            items.forEach(item -> add("- ", item));
        }
    }

    private void asked() {
        AskedLines asked = new AskedLines(outline, wording, words);
        listed(words.say("known"), asked.facts());
        listed(words.say("logged"), asked.sessions(spec));
    }

    private void sections() {
        section("stop", outline.stop(),
                DecisionTable.ofStop(program));
        DecisionTable.ofBreak(program).ifPresent(table -> section("break", outline.afterABreak()
                .orElseThrow(), table));
        section("everyStage", outline.everyStage(),
                DecisionTable.ofEveryStage(program));
        DecisionTable.ofPlacement(program).ifPresent(table -> {
            heading(words.say("place"));
            new AskedLines(outline, wording, words).assessments().forEach(line -> add("- ", line));
            lines.addAll(new TableText(outline, Optional.empty(), wording).lines(table));
        });
    }

    private void section(String key, RuleList rules, DecisionTable table) {
        if (rules.rules().isEmpty()) {
            return;
        }
        heading(words.say("section." + key));
        add("", words.say("about." + key));
        where(table);
        lines.addAll(new TableText(outline, Optional.empty(), wording).lines(table));
    }

    private void where(DecisionTable table) {
        if (!table.where().isEmpty()) {
            add("", words.say("left", new ClauseText(wording).all(table.where())));
        }
    }

    private void stage(Stage stage) {
        heading(words.say("stageOf", Integer.toString(stage.number() + 1),
                Integer.toString(outline.stages().size()), Shown.text(stage.name())));
        stage.prescription().map(new PrescriptionText(wording)::phrases)
                .ifPresent(phrases -> phrases.forEach(phrase -> add("- ", phrase)));
        if (!stage.ladder().equals(Ladder.SINGLE)) {
            add(words.say("rungsFirst") + " ", new LadderText(wording).of(stage.ladder()));
        }
        DecisionTable table = DecisionTable.ofStage(program, stage.number());
        where(table);
        lines.addAll(new TableText(outline, Optional.of(stage), wording).lines(table));
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
