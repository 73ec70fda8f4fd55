package rungwright.finding;

import static rungwright.finding.Severity.ERROR;
import static rungwright.finding.Severity.NOTE;
import static rungwright.finding.Severity.WARNING;

import java.util.Locale;

/** The stable word for each trouble a spec can have, with its usual severity. */
public enum Code {
    /** The text is not YAML. */
    YAML_SYNTAX(ERROR),
    /** YAML that specs do not use: anchors, aliases, tags, merge keys, several documents. */
    YAML_FEATURE(ERROR),
    /** A key that stands twice in one map. */
    DUPLICATE_KEY(ERROR),
    /** A key that means nothing here. */
    UNKNOWN_KEY(ERROR),
    /** A key or a content that must be here and is not. */
    MISSING_KEY(ERROR),
    /** A map where a list is meant, and the like. */
    WRONG_KIND(ERROR),
    /** A value that cannot be read as what is meant here. */
    BAD_VALUE(ERROR),
    /** More than the stated caps. */
    TOO_LARGE(ERROR),
    /** A name that nothing in the spec has. */
    UNKNOWN_NAME(ERROR),
    /** Two things with one name. */
    DUPLICATE_NAME(ERROR),
    /** A value outside its measure's range. */
    OUT_OF_RANGE(ERROR),
    /** A value between two values of its measure's grid. */
    OFF_GRID(ERROR),
    /** Units that count different things. */
    UNIT_MISMATCH(ERROR),
    /** A criterion, or a set of them, that no session can meet. */
    NEVER_TRUE(ERROR),
    /** A formula that rises and falls in one of its names. */
    NOT_STEADY(ERROR),
    /** A session that no rule answers. */
    GAP(ERROR),
    /** A session that two rules answer in different ways. */
    OVERLAP(ERROR),
    /** A fall back on the easiest rung. */
    NO_RUNG_BELOW(ERROR),
    /** A target that is not there for some trainee. */
    NO_TARGET(ERROR),
    /** More than can be proven within the budget. */
    TOO_COMPLEX(ERROR),
    /** A stage that no run of events leads to. */
    UNREACHABLE_STAGE(ERROR),
    /** A place from which the goal cannot be reached. */
    GOAL_OUT_OF_REACH(ERROR),
    /** A place that no session leads out of. */
    STUCK(ERROR),
    /** A rule that is left nothing to decide. */
    NEVER_FIRES(WARNING),
    /** A measure that no rule and no formula reads. */
    UNUSED_MEASURE(WARNING),
    /** One session that moves a trainee to and fro for ever. */
    SEE_SAW(WARNING),
    /** A session that two rules answer in the same way. */
    SAME_OUTCOME_OVERLAP(WARNING),
    /** No cautions for those who follow the program. */
    NO_CAUTIONS(WARNING),
    /** No rule that stops a session. */
    NO_STOP(WARNING),
    /** A rung more than ten per cent above the one below. */
    JUMP_OVER_TEN_PERCENT(NOTE),
    /** A set at the target that lasts under 30 s or over 90 s. */
    WORK_TIME_OUTSIDE_WINDOW(NOTE),
    /** Less rest than heavy sets want. */
    REST_TOO_SHORT(NOTE);

    private final Severity usual;

    Code(Severity usual) {
        this.usual = usual;
    }

    /** As it is printed: {@code no-rung-below}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The severity unless the finding says otherwise. */
    public Severity usual() {
        return usual;
    }
}
