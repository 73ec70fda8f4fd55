package rungwright.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.text.Words;

/** The boxes of a picture, from the start down to the goal, with what stands in each. */
record Panels(Layout layout, Sketch sketch, Optional<Trail> trail) {
    /** All of them, which have no place yet. */
    List<Panel> all() {
        List<Panel> panels = new ArrayList<>();
        boolean leads = sketch.links().stream().anyMatch(link -> link.from() == Sketch.ANYWHERE);
        if (layout.told() ? !sketch.everywhere().isEmpty() : leads) {
            panels.add(everywhere());
        }
        panels.add(start());
        sketch.stages().forEach(stage -> panels.add(stage(stage)));
        panels.add(goal());
        return panels;
    }

    private Panel everywhere() {
        List<Panel.Line> lines = new ArrayList<>(wrapped("name",
                sketch.words().say(layout.told() ? "everywhere" : "everywhereBelow")));
        if (layout.told()) {
            sketch.everywhere().forEach(rule -> lines.addAll(wrapped("small", rule)));
        }
        return panel(Sketch.ANYWHERE, "everywhere", lines);
    }

    private Panel start() {
        Words words = sketch.words();
        List<Panel.Line> lines = new ArrayList<>(wrapped("name", words.say("start")));
        List<Link> ways = sketch.links().stream().filter(link -> link.kind() == Link.Kind.PLACE).toList();
        boolean all = ways.size() == 1
                && ways.get(0).words().equals(words.language().words("rules").say("whateverElse"));
        for (Link way : ways) {
            String to = way.to() == sketch.goalNumber() ? words.say("toTheGoal")
                    : words.say("toStage", Integer.toString(way.to() + 1),
                            sketch.stages().get(way.to()).name());
            lines.addAll(wrapped("small", all ? words.say("placeAll", to)
                    : words.say("placeWhen", way.words(), to)));
        }
        if (ways.isEmpty()) {
            lines.addAll(wrapped("small", words.say("everybody")));
        }
        return panel(Sketch.START, "start", lines);
    }

    private Panel stage(StageBox stage) {
        List<Panel.Line> lines = new ArrayList<>(wrapped("name", sketch.words().say("stage",
                Integer.toString(stage.number() + 1), stage.name())));
        stage.doing().stream().limit(layout.told() ? 2 : 1)
                .forEach(phrase -> lines.addAll(wrapped("small", phrase)));
        new Cells(layout).rows(stage.rungs())
                .forEach(row -> lines.add(new Panel.Line("cells", "", row, 34)));
        if (layout.told()) {
            stage.rules().forEach(rule -> lines.addAll(wrapped("small", rule)));
        }
        lines.addAll(marks(stage.number()));
        return panel(stage.number(), "stage", lines);
    }

    private Panel goal() {
        List<Panel.Line> lines = new ArrayList<>(wrapped("name", sketch.words().say("goal")));
        lines.addAll(wrapped("small", sketch.goal()));
        lines.addAll(marks(sketch.goalNumber()));
        return panel(sketch.goalNumber(), "goal", lines);
    }

    /** What a trail says of its times here. */
    private List<Panel.Line> marks(int part) {
        List<Panel.Line> lines = new ArrayList<>();
        List<Trail.Step> steps = trail.map(Trail::steps).orElse(List.of());
        for (int step = 0; step < steps.size(); step++) {
            if (steps.get(step).stage() == part) {
                lines.addAll(wrapped("small mark", (step + 1) + ": " + steps.get(step).words()));
            }
        }
        return lines;
    }

    private Panel panel(int part, String look, List<Panel.Line> lines) {
        return new Panel(part, look, layout.box(), lines, 0);
    }

    private List<Panel.Line> wrapped(String look, String words) {
        boolean large = look.equals("name");
        boolean bold = large || look.equals("small mark");
        return new Letters(large ? layout.large() : layout.small(), bold).lines(words, layout.room()).stream()
                .map(line -> new Panel.Line(look, line, List.of(), large ? 24 : 18)).toList();
    }
}
