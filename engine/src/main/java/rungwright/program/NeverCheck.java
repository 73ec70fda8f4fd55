package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.region.Box;

/** Criteria that no session can meet, and rules that are left nothing to decide. */
final class NeverCheck {
    private NeverCheck() {
    }

    /** Lists of criteria of which each can be met, but not all in one session. */
    static List<Finding> neverTrue(Ground ground) {
        List<Finding> findings = new ArrayList<>();
        for (Rule rule : ground.rules()) {
            for (List<Criterion> criteria : rule.when().anyOf()) {
                List<Box> boxes = Boxes.of(criteria, ground.space().axes());
                if (!criteria.isEmpty() && boxes.stream().noneMatch(ground.space()::holds)) {
                    findings.add(neverTrue(rule, criteria.get(0).place()));
                }
            }
        }
        return findings;
    }

    private static Finding neverTrue(Rule rule, Place place) {
        return Finding.of(Code.NEVER_TRUE, place,
                "no session can meet all of this " + Shown.quoted(rule.kind().word()) + " at once")
                .withHint("each criterion can be met alone, but not all together: change one of them");
    }

    /** Rules that decide nothing in any of the given situations. */
    static List<Finding> neverFires(List<Ground> grounds, List<List<Box>> parts) {
        List<Finding> findings = new ArrayList<>();
        for (int rule = 0; rule < grounds.get(0).rules().size(); rule++) {
            if (grounds.get(0).rules().get(rule).when().whole() && !firesAnywhere(grounds, parts, rule)
                    && grounds.stream().noneMatch(Ground::isSpent)) {
                findings.add(neverFires(grounds.get(0), rule));
            }
        }
        return findings;
    }

    private static boolean firesAnywhere(List<Ground> grounds, List<List<Box>> parts, int rule) {
        for (int ground = 0; ground < grounds.size(); ground++) {
            Ground here = grounds.get(ground);
            if (parts.get(ground).stream().anyMatch(part -> here.whereItFires(rule, part).isPresent())) {
                return true;
            }
        }
        return false;
    }

    private static Finding neverFires(Ground ground, int index) {
        Rule rule = ground.rules().get(index);
        boolean meets = rule.when().otherwise()
                || ground.boxes(index).stream().anyMatch(box -> ground.where(index, box).isPresent());
        String why = meets ? "it asks for more sessions here than its other criteria allow"
                : "whatever it covers is decided by other rules before it";
        return Finding.of(Code.NEVER_FIRES, rule.place(), Shown.quoted(rule.label()) + " never fires: " + why)
                .withHint("take it out, or change what it asks for");
    }
}
