package rungwright.compare;

/** A part of a program that is not a rule. */
public enum Part {
    /** A stage. */
    STAGE(true),
    /** The order of the stages; what it decides is told stage by stage. */
    ORDER(false),
    /** The rungs of a stage. */
    LADDER(true),
    /** What is logged: its values, where it is logged, what a session without it counts as. */
    MEASURE(true),
    /** What is worked out from that; what it decides is told stage by stage. */
    WORKED_OUT(false),
    /** What must be logged in a stage. */
    NEEDED(true),
    /** What is known about a trainee. */
    FACT(true),
    /** What is assessed before placement. */
    ASSESSMENT(true),
    /** What to do in a stage. */
    PRESCRIPTION(false),
    /** Words for people: the goal, cautions, sources, what a rule says. */
    WORDS(false);

    private final boolean decides;

    Part(boolean decides) {
        this.decides = decides;
    }

    /** Whether a trainee may be told something else because of it. */
    public boolean decides() {
        return decides;
    }
}
