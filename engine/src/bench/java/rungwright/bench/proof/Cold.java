package rungwright.bench.proof;

/** A process of its own that proves one table, the first thing it does. */
final class Cold {
    private Cold() { }

    /** The name of a table; prints the milliseconds from the start of this method to the answer. */
    public static void main(String[] arguments) {
        long start = System.nanoTime();
        Ours ours = new Ours(Cases.unchecked(arguments[0]));
        boolean proven = ours.gaps().isCovered() & ours.overlaps().isDisjoint();
        long took = System.nanoTime() - start;
        System.out.println(took / 1e6 + " " + proven);
    }
}
