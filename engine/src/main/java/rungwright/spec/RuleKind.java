package rungwright.spec;

/** Which list a rule stands in. */
public enum RuleKind {
    /** Moves up. */
    ADVANCE("advance"),
    /** Moves down. */
    FALL_BACK("fall back"),
    /** Keeps the place. */
    HOLD("hold"),
    /** Ends the session until a professional has cleared the trainee. */
    STOP("stop"),
    /** Looks at an absence before the session that follows it. */
    BREAK("after a break"),
    /** Says where a new trainee starts. */
    PLACE("place");

    private final String word;

    RuleKind(String word) {
        this.word = word;
    }

    /** The key it stands under in a spec. */
    public String word() {
        return word;
    }
}
