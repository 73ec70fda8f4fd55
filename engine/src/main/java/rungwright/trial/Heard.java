package rungwright.trial;

/** Hears how far some long work has got. */
@FunctionalInterface
public interface Heard {
    /** Nobody who listens. */
    Heard NOBODY = (done, all) -> { };

    /** So much of all is done. */
    void of(long done, long all);
}
