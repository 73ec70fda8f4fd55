package rungwright.compare;

import java.util.Locale;

/** How somebody in mid-program finds their place in a new version. */
public enum Landing {
    /** On the stage and rung of the same name. */
    SAME_NAME,
    /** The same stage under the name that it was told to have now. */
    RENAMED,
    /** In a stage that nobody said is the same, but which decides the same and has the same rungs. */
    SAME_MEANING,
    /** On the rung of the same amount, which is called something else now. */
    SAME_AMOUNT,
    /** On the next easier rung, since theirs is gone. */
    EASIER_RUNG,
    /** On the bottom rung, since theirs is gone and none is known to be easier. */
    BOTTOM_RUNG;

    /** As JSON writes it: {@code same name}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Whether the place they stood in is there in the new version. */
    public boolean isThere() {
        return switch (this) {
            case SAME_NAME, RENAMED, SAME_MEANING, SAME_AMOUNT -> true;
            case EASIER_RUNG, BOTTOM_RUNG -> false;
        };
    }
}
