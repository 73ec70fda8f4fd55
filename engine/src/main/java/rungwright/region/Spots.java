package rungwright.region;

/** What the positions of an axis stand for. */
final class Spots {
    private Spots() {
    }

    /** The number at position 0: 0 for a grid, the least count for a count. */
    static long least(Axis axis) {
        return axis.match(new Least());
    }

    /** The cuts of an axis of classes. */
    static Cuts cuts(Axis axis) {
        return axis.match(new CutsOf());
    }

    /** Whether the last position stands for its number or more. */
    static boolean isOpen(Axis axis) {
        return axis.match(new Open());
    }

    /** Whether the positions are values of something logged or known, and nothing is worked out. */
    static boolean isDirect(Axis axis) {
        return axis.match(new Direct());
    }

    private static <R> R none(Axis axis) {
        throw new IllegalArgumentException("the wrong kind of axis for " + axis.quantity().name());
    }

    private static final class Least implements Axis.Cases<Long> {
        @Override
        public Long grid(Axis.Grid axis) {
            return 0L;
        }

        @Override
        public Long count(Axis.Count axis) {
            return axis.least();
        }

        @Override
        public Long classes(Axis.Classes axis) {
            return none(axis);
        }
    }

    private static final class CutsOf implements Axis.Cases<Cuts> {
        @Override
        public Cuts grid(Axis.Grid axis) {
            return none(axis);
        }

        @Override
        public Cuts count(Axis.Count axis) {
            return none(axis);
        }

        @Override
        public Cuts classes(Axis.Classes axis) {
            return axis.cuts();
        }
    }

    private static final class Open implements Axis.Cases<Boolean> {
        @Override
        public Boolean grid(Axis.Grid axis) {
            return false;
        }

        @Override
        public Boolean count(Axis.Count axis) {
            return axis.open();
        }

        @Override
        public Boolean classes(Axis.Classes axis) {
            return false;
        }
    }

    private static final class Direct implements Axis.Cases<Boolean> {
        @Override
        public Boolean grid(Axis.Grid axis) {
            return true;
        }

        @Override
        public Boolean count(Axis.Count axis) {
            return true;
        }

        @Override
        public Boolean classes(Axis.Classes axis) {
            return false;
        }
    }
}
