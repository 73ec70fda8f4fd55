package rungwright.oracle;

/** A place: a stage and a rung of one person, both from 0; or the goal. */
record Spot(int stage, int rung) {
    static final Spot GOAL = new Spot(-1, -1);

    boolean goal() {
        return equals(GOAL);
    }
}
