package rungwright.program;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.spec.Text;

/** Reads where a rule sends a trainee. */
final class TargetReader {
    private static final Pattern BY_RUNGS = Pattern.compile("(\\d{1,9}) rungs? (up|down)");
    private static final String STAGE = "stage ";
    private static final String FORMS =
            "write `1 rung up`, `2 rungs down`, `same place`, `start`, `goal` or `stage …`";
    private static final int MOST_RUNGS = 1_000;

    private final StageFinder stages;
    private final RungReader rungs;
    private final Troubles troubles;

    TargetReader(List<StageLadder> stages, Vocabulary names, Troubles troubles) {
        this.stages = new StageFinder(stages, troubles);
        this.rungs = new RungReader(names, troubles);
        this.troubles = troubles;
    }

    /** The target, or nothing after saying what is wrong. */
    Optional<Target> read(Text text, TargetUse use) {
        String tidy = Tidy.of(text);
        Matcher byRungs = BY_RUNGS.matcher(tidy);
        if (byRungs.matches()) {
            return byRungs(text, Integer.parseInt(byRungs.group(1)), byRungs.group(2).equals("up"), use);
        }
        if (tidy.startsWith(STAGE)) {
            return stage(tidy.substring(STAGE.length()), text.place());
        }
        return switch (tidy) {
            case "goal" -> Optional.of(new Target.Goal());
            case "same place" -> allowed(new Target.SamePlace(), text, use);
            case "start" -> allowed(new Target.Start(), text, use);
            default -> troubles.refuse(Code.BAD_VALUE, text.place(),
                    Shown.quoted(tidy) + " is no place to go to", stages.hint(tidy).orElse(FORMS));
        };
    }

    private Optional<Target> byRungs(Text text, int number, boolean up, TargetUse use) {
        Optional<String> refusal = use.refusal(up);
        if (refusal.isPresent()) {
            return troubles.refuse(Code.BAD_VALUE, text.place(),
                    Shown.quoted(text.value()) + " cannot stand here", refusal.get());
        }
        if (number < 1 || number > MOST_RUNGS) {
            return troubles.refuse(number < 1 ? Code.BAD_VALUE : Code.TOO_LARGE, text.place(),
                    Shown.quoted(text.value()) + " is no move of 1 to 1,000 rungs", FORMS);
        }
        return Optional.of(new Target.ByRungs(number, up));
    }

    private Optional<Target> allowed(Target target, Text text, TargetUse use) {
        return use.refusalOfWords().isEmpty() ? Optional.of(target)
                : troubles.refuse(Code.BAD_VALUE, text.place(),
                Shown.quoted(text.value()) + " cannot stand here", use.refusalOfWords().get());
    }

    private Optional<Target> stage(String rest, Place place) {
        return stages.find(rest, place).flatMap(found -> rungs.read(found.stage(), found.rest(), place)
                .map(rung -> new Target.AtStage(found.stage().number(), rung)));
    }
}
