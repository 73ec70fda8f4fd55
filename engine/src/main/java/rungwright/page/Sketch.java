package rungwright.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwright.program.Outline;
import rungwright.program.Rule;
import rungwright.program.Stage;
import rungwright.program.Target;
import rungwright.spec.RuleKind;
import rungwright.text.Language;
import rungwright.text.RuleWords;
import rungwright.text.Words;

/**
 * What a picture of a program shows: its stages, the ways between them, and what holds everywhere.
 *
 * @param everywhere the rules that hold in every stage, each in one sentence
 * @param words what a picture says besides
 */
record Sketch(String title, String goal, List<String> everywhere, List<StageBox> stages, List<Link> links,
        Words words) {
    /** Where a new trainee comes in. */
    static final int START = -1;
    /** Wherever a trainee is. */
    static final int ANYWHERE = -2;

    Sketch {
        everywhere = List.copyOf(everywhere);
        stages = List.copyOf(stages);
        links = List.copyOf(links);
    }

    /** The picture's parts, from a program that need not be proven. */
    static Sketch of(Outline outline, Language language) {
        return new Making(outline, language).sketch();
    }

    /** The number that stands for the goal. */
    int goalNumber() {
        return stages.size();
    }

    /** Whether there are place rules. */
    boolean hasPlacement() {
        return links.stream().anyMatch(link -> link.kind() == Link.Kind.PLACE);
    }

    /** When a way is gone, with every other that is drawn as the same line. */
    String words(Link line) {
        return links.stream().filter(line::runsWith).map(Link::words).distinct()
                .reduce((all, next) -> words.say("orElse", all, next)).orElse("");
    }

    /** Gathers the parts. */
    private static final class Making {
        private final Outline outline;
        private final RuleWords rules;
        private final Words words;
        private final List<Link> links = new ArrayList<>();

        Making(Outline outline, Language language) {
            this.outline = outline;
            this.rules = new RuleWords(outline, language);
            this.words = language.words("picture");
        }

        Sketch sketch() {
            outline.placement().ifPresent(list -> list.rules()
                    .forEach(rule -> link(Link.Kind.PLACE, START, Optional.empty(), rule)));
            outline.stages().forEach(this::links);
            outline.stop().rules().forEach(rule -> link(Link.Kind.CLEARED, ANYWHERE, Optional.empty(), rule));
            outline.afterABreak().ifPresent(list -> list.rules()
                    .forEach(rule -> link(Link.Kind.BREAK, ANYWHERE, Optional.empty(), rule)));
            outline.everyStage().rules().forEach(rule -> link(kind(rule), ANYWHERE, Optional.empty(), rule));
            return new Sketch(words.say("title", outline.name(), outline.version()), outline.goal(),
                    everywhere(),
                    outline.stages().stream().map(this::box).toList(), links, words);
        }

        private List<String> everywhere() {
            Stream<String> stops = outline.stop().rules().stream()
                    .map(rule -> words.say("stop", rules.when(rule), rules.where(Optional.empty(), rule)));
            Stream<String> breaks = outline.afterABreak().stream().flatMap(list -> list.rules().stream())
                    .map(rule -> words.say("break", rules.when(rule), rules.where(Optional.empty(), rule)));
            Stream<String> holds = outline.everyStage().rules().stream().map(rule -> sentence(
                    Optional.empty(), rule));
            return Stream.of(stops, breaks, holds).flatMap(each -> each).toList();
        }

        private StageBox box(Stage stage) {
            return new StageBox(stage.number(), stage.name(), RungCells.of(stage.ladder(), rules),
                    stage.prescription().map(rules::doing).orElse(List.of()),
                    stage.rules().stream().map(rule -> sentence(Optional.of(stage), rule)).toList());
        }

        private String sentence(Optional<Stage> stage, Rule rule) {
            return switch (rule.kind()) {
                case ADVANCE -> words.say("movesOn", rules.when(rule), rules.where(stage, rule));
                case FALL_BACK -> words.say("goesBack", rules.when(rule), rules.where(stage, rule));
                case HOLD, STOP, BREAK, PLACE -> words.say("stays", rules.when(rule));
            };
        }

        private void links(Stage stage) {
            stage.rules().stream().filter(rule -> rule.kind() != RuleKind.HOLD)
                    .forEach(rule -> link(kind(rule), stage.number(), Optional.of(stage), rule));
        }

        private static Link.Kind kind(Rule rule) {
            return rule.kind() == RuleKind.ADVANCE ? Link.Kind.ADVANCE : Link.Kind.FALL_BACK;
        }

        private void link(Link.Kind kind, int from, Optional<Stage> stage, Rule rule) {
            Ends ends = new Ends(outline, stage);
            // A move by rungs leads out of its stage only from the end rung, which may say itself where to.
            boolean byRungs = rule.to() instanceof Target.ByRungs && rule.atTheEnd().isPresent();
            List<Integer> direct = byRungs ? List.of() : rule.to().match(ends);
            List<Integer> fromTheEnd = rule.atTheEnd().map(to -> to.match(ends)).orElse(List.of());
            Stream.concat(direct.stream(), fromTheEnd.stream()).filter(to -> to != from)
                    .map(to -> new Link(kind, from, to, rules.when(rule)))
                    .filter(link -> !links.contains(link)).forEach(links::add);
        }
    }

    /** The stages, or the goal, or the start, that a target can lead to from a stage, besides itself. */
    private record Ends(Outline outline, Optional<Stage> stage) implements Target.Cases<List<Integer>> {
        @Override
        public List<Integer> byRungs(Target.ByRungs target) {
            return target.up() ? stage.map(one -> List.of(one.number() + 1)).orElse(List.of()) : List.of();
        }

        @Override
        public List<Integer> samePlace() {
            return List.of();
        }

        @Override
        public List<Integer> start() {
            return List.of(outline.placement().isPresent() ? START : 0);
        }

        @Override
        public List<Integer> goal() {
            return List.of(outline.stages().size());
        }

        @Override
        public List<Integer> atStage(Target.AtStage target) {
            return List.of(target.stage());
        }
    }
}
