package rungwright.text;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rungwright.finding.Shown;
import rungwright.step.Decision;
import rungwright.step.Progress;
import rungwright.step.Reason;

/** Why a decision was taken, on a line: the rule, how far it has got, and what was logged of what it asks. */
record WhyText(Wording wording) {
    static final WhyText ENGLISH = new WhyText(Wording.ENGLISH);

    String of(Decision decision) {
        Optional<String> rule = decision.rule().map(each -> Shown.text(wording.label(each.label())));
        Optional<Progress> progress = decision.outcome().progress().filter(each -> !each.isComplete());
        List<Reason> met = decision.reasons().stream().filter(Reason::met).toList();
        String reasons = met.isEmpty() ? decision.reasons().stream().map(this::unmet).distinct()
                .collect(Collectors.joining(", "))
                : met.stream().map(this::reason).collect(Collectors.joining(", "));
        return rule.map(label -> label + progress.map(this::progress).orElse("")
                + (reasons.isEmpty() ? "" : ": " + reasons)).orElse("");
    }

    private String progress(Progress progress) {
        return " (" + wording.rules().say("progress", Integer.toString(progress.met()),
                Integer.toString(progress.wanted())) + ")";
    }

    /** What kept another rule from speaking, for an {@code otherwise}. */
    private String unmet(Reason reason) {
        return wording.rules().say("isNot", reason(reason), Shown.text(wording.asked(reason.name(),
                reason.needed())));
    }

    private String reason(Reason reason) {
        return Shown.text(wording.name(reason.name())) + " "
                + Shown.text(wording.asked(reason.name(), reason.logged()));
    }
}
