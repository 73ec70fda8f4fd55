package rungwright.region;

/**
 * A place that no box covers.
 *
 * @param box a maximal box that no box meets: along no axis can it be made longer, and it spans an axis
 *     wholly where that was possible, so that the axis need not be mentioned
 * @param core a part of {@code box} that holds a real point and shares none with the gaps listed before, from
 *     which a witness may be taken
 */
public record Gap(Box box, Box core) {
    /** Refuses a core that is not a part of the box. */
    public Gap {
        if (!box.covers(core)) {
            throw new IllegalArgumentException("the core " + core + " is not a part of " + box);
        }
    }
}
