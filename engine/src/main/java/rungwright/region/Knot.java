package rungwright.region;

/** Axes that depend on each other, and on no others but through the number of sets. */
interface Knot {
    /** Where its axes stand in the space. */
    int[] places();

    /** Whether what can be with some number of sets can be with more: further sets may be blank. */
    boolean takesMoreSets();

    /** Whether the cell holds something real with so many sets; also true where the budget is spent. */
    boolean holds(Box cell, int sets, Budget budget);

    /**
     * Writes something real of the cell into a draft; false where there is nothing, or the budget is spent.
     */
    boolean draw(Box cell, int sets, Draft draft, Budget budget);
}
