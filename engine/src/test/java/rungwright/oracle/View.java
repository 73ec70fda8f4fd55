package rungwright.oracle;

/** What the rules can see at one moment. */
interface View {
    /** Whether a criterion holds; what it asks about must have a reading. */
    boolean holds(Crit crit);
}
