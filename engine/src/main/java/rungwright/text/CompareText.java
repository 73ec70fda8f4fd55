package rungwright.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rungwright.compare.Comparison;
import rungwright.compare.Difference;
import rungwright.compare.Part;
import rungwright.compare.Proof;
import rungwright.compare.Rungs;
import rungwright.compare.Where;
import rungwright.finding.Shown;
import rungwright.program.Outline;
import rungwright.program.Stage;
import rungwright.region.Moment;
import rungwright.step.Decision;
import rungwright.step.Event;

/**
 * In what two programs differ, in words within 80 columns.
 *
 * <pre>
 * Stage assisted dip, any rung
 * - at reps 10 to 11 and clean yes
 *   before: hold (line 41)
 *   now:    advance, 1 rung up (line 41)
 *   for example: stage `assisted dip`, rung 40 kg, reps 10, clean yes
 * </pre>
 */
public final class CompareText implements Difference.Cases<Void> {
    private static final int WIDEST = 80;
    private static final int MOST_REGIONS = 6;

    private final Comparison comparison;
    private final Colours colours;
    private final List<SameEverywhere> all;
    private final Map<String, List<String>> sections = new LinkedHashMap<>();
    private List<String> stages = List.of();

    private CompareText(Comparison comparison, Colours colours) {
        this.comparison = comparison;
        this.colours = colours;
        this.all = SameEverywhere.of(comparison);
    }

    /** The whole comparison: first whether both decide the same, then each difference where it belongs. */
    public static List<String> lines(Comparison comparison, Colours colours) {
        CompareText text = new CompareText(comparison, colours);
        text.all.stream().filter(each -> each.first().decides()).forEach(text::say);
        text.all.stream().filter(each -> !each.first().decides()).forEach(text::say);
        comparison.perhapsRenamed().byOldName().forEach(text::perhapsRenamed);
        List<String> lines = new ArrayList<>(text.head());
        text.sections.forEach((heading, items) -> {
            lines.add("");
            lines.add(colours.strong(heading));
            lines.addAll(items);
        });
        return lines;
    }

    private void say(SameEverywhere difference) {
        stages = difference.stages();
        difference.first().match(this);
    }

    private void perhapsRenamed(String old, String changed) {
        add(items(heading(Part.STAGE)), "- ", Shown.text(changed) + " decides the same as " + Shown.text(old)
                + " did; if it is that stage, say --rename \"" + Shown.whole(old) + "=" + Shown.whole(changed)
                + "\"");
    }

    private List<String> head() {
        Outline old = comparison.old().outline();
        Outline changed = comparison.changed().outline();
        String before = Shown.whole(old.name()) + ", version " + Shown.whole(old.version());
        String now = (old.name().equals(changed.name()) ? "" : Shown.whole(changed.name()) + ", ")
                + "version " + Shown.whole(changed.version());
        List<String> lines = new ArrayList<>(Wrap.lines(before + ", and " + now + ":", WIDEST));
        lines.addAll(Wrap.lines(verdict(), WIDEST));
        return lines;
    }

    private String verdict() {
        long deciding = all.stream().map(SameEverywhere::first).filter(Difference::decides).count();
        long others = all.size() - deciding;
        if (deciding > 0) {
            return Count.of(deciding, "difference") + " in what is decided"
                    + (others == 0 ? "" : ", " + others + " besides") + ".";
        }
        return "Both decide the same for every trainee, in every state, at every session"
                + (others == 0 ? "; nothing differs." : "; " + Count.of(others, "difference")
                        + " besides.");
    }

    @Override
    public Void decided(Difference.Decided difference) {
        Where where = difference.where();
        List<String> items = items(where(where));
        add(items, "- ", at(difference));
        add(items, "  before: ", new OutcomeText(comparison.old().outline(), where.moment())
                .of(difference.before()));
        add(items, "  now:    ", new OutcomeText(comparison.changed().outline(), where.moment())
                .of(difference.after()));
        example(items, where.moment(), difference.witness());
        return null;
    }

    /** The readings at which two programs decide differently: {@code at reps 10 to 11 and clean yes}. */
    static String at(Difference.Decided difference) {
        List<String> regions = difference.regions().stream().map(ClauseText.ENGLISH::all).distinct().toList();
        String at = regions.stream().limit(MOST_REGIONS).collect(Collectors.joining("; or "))
                + (regions.size() > MOST_REGIONS ? "; and at " + (regions.size() - MOST_REGIONS)
                        + " more such regions" : "") + (difference.whole() ? "" : "; and more");
        return switch (difference.where().moment()) {
            case SESSION -> at.equals("any session") ? "at any session" : "at " + at;
            case BREAK -> at.equals("any session") ? "after any break" : "at " + at;
            case PLACEMENT -> at.equals("any session") ? "for anybody" : "for who has " + at;
        };
    }

    private void example(List<String> items, Moment moment, Optional<Proof> proof) {
        if (proof.isEmpty()) {
            add(items, "  ", "No trainee was found for whom both come to something else, so it may make no"
                    + " difference after all.");
            return;
        }
        add(items, "  for example: ", WitnessText.of(proof.get().witness()) + counted(proof.get())
                + ": " + (proof.get().eventAfter() instanceof Event.Clearance ? "once cleared, " : "")
                + comes(moment, proof.get().before()) + " before, "
                + comes(moment, proof.get().after()) + " now");
    }

    /** A row or window that is open in the example. */
    private static String counted(Proof proof) {
        int met = proof.stateAfter().stream().flatMap(state -> state.tallies().values().stream())
                .mapToInt(tally -> tally.met()).max().orElse(0);
        return met == 0 ? "" : ", after " + Count.of(met, "session") + " that counted";
    }

    private static String comes(Moment moment, Decision decision) {
        if (moment == Moment.BREAK) {
            return decision.breakMove().map(move -> "to " + ReplayText.to(move)).orElse("no move");
        }
        return decision.kind().word() + decision.after().map(state -> " at " + ReplayText.place(state))
                .orElse("");
    }

    @Override
    public Void changed(Difference.Changed difference) {
        List<String> items = items(heading(difference.part()));
        String name = Shown.text(difference.name());
        if (difference.before().isEmpty()) {
            add(items, "- ", name + " is new: " + Shown.whole(difference.after().orElse("")));
        } else if (difference.after().isEmpty()) {
            add(items, "- ", name + " is gone: " + Shown.whole(difference.before().get()));
        } else {
            add(items, "- ", name);
            add(items, "  before: ", Shown.whole(difference.before().get()));
            add(items, "  now:    ", Shown.whole(difference.after().get()));
        }
        return null;
    }

    private static String heading(Part part) {
        return switch (part) {
            case STAGE -> "Stages that came or went";
            case ORDER -> "The order of the stages";
            case LADDER -> "Ladders";
            case MEASURE -> "What is logged";
            case WORKED_OUT -> "What is worked out";
            case NEEDED -> "What must be logged in a stage";
            case FACT -> "What is known about a trainee";
            case ASSESSMENT -> "What is assessed before the start";
            case PRESCRIPTION -> "What to do in a stage";
            case WORDS -> "Words for people";
        };
    }

    @Override
    public Void unsettled(Difference.Unsettled difference) {
        add(items(where(difference.where())), "- ", "not compared: " + difference.why());
        return null;
    }

    private String where(Where where) {
        return switch (where.moment()) {
            case SESSION -> stages.size() < 2 ? "Stage " + Shown.text(where.stage().orElse("")) + rungs(where)
                    : stages.size() == comparison.changed().outline().stages().size() ? "Every stage"
                    : "Stages " + Listed.and(stages.stream().map(Shown::text).toList());
            case BREAK -> "After a break";
            case PLACEMENT -> "Where a new trainee starts";
        };
    }

    private String rungs(Where where) {
        Optional<Stage> stage = comparison.changed().outline().stages().stream()
                .filter(each -> where.stage().equals(Optional.of(each.name()))).findFirst();
        List<Rungs> all = stage.map(each -> Rungs.in(each.ladder())).orElse(List.of());
        if (all.size() == 1) {
            return "";
        }
        return where.rungs().containsAll(all) ? ", any rung"
                : ", " + Listed.or(where.rungs().stream().map(CompareText::rung).toList());
    }

    private static String rung(Rungs rungs) {
        return switch (rungs) {
            case ONLY -> "the only rung";
            case BOTTOM -> "the bottom rung";
            case INNER -> "a rung between bottom and top";
            case TOP -> "the top rung";
        };
    }

    private List<String> items(String heading) {
        return sections.computeIfAbsent(heading, unknown -> new ArrayList<>());
    }

    private static void add(List<String> items, String lead, String text) {
        items.addAll(Wrap.after(lead, text, WIDEST));
    }
}
