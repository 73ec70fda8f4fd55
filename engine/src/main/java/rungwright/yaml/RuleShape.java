package rungwright.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwright.spec.RuleKind;

/** Which keys a rule has, by its kind; each key that only other rules have gets its own hint. */
final class RuleShape {
    /** Every key of any rule. */
    static final List<String> ALL = List.of("when", "in a row", "within", "to", "at the bottom", "at the top",
            "once cleared", "say", "name");

    private RuleShape() {
    }

    static Shape of(RuleKind kind) {
        List<String> keys = new ArrayList<>();
        Map<String, String> misplaced = new LinkedHashMap<>();
        for (String key : ALL) {
            String reason = reason(kind, key);
            if (reason.isEmpty()) {
                keys.add(key);
            } else {
                misplaced.put(key, reason);
            }
        }
        return new Shape(owner(kind), keys, misplaced);
    }

    private static String owner(RuleKind kind) {
        return switch (kind) {
            case ADVANCE -> "an `advance` rule";
            case FALL_BACK, HOLD, STOP, PLACE -> "a `" + kind.word() + "` rule";
            case BREAK -> "an `after a break` rule";
        };
    }

    /** Why a key is not for rules of a kind; empty where it is. */
    private static String reason(RuleKind kind, String key) {
        return switch (key) {
            case "in a row", "within" -> counts(kind) ? "" : "only stages and `every stage` count sessions";
            case "to" -> to(kind);
            case "at the bottom" -> kind == RuleKind.FALL_BACK ? "" : "only a `fall back` has it";
            case "at the top" -> kind == RuleKind.ADVANCE ? "" : "only an `advance` has it";
            case "once cleared" -> kind == RuleKind.STOP ? "" : "only a `stop` has it";
            default -> "";
        };
    }

    private static boolean counts(RuleKind kind) {
        return switch (kind) {
            case ADVANCE, FALL_BACK, HOLD -> true;
            case STOP, BREAK, PLACE -> false;
        };
    }

    private static String to(RuleKind kind) {
        return switch (kind) {
            case ADVANCE, FALL_BACK, BREAK, PLACE -> "";
            case HOLD -> "a hold keeps the place and has no target; `advance` and `fall back` have one";
            case STOP -> "a stop keeps the place; where it goes on is said by `once cleared`";
        };
    }
}
