package rungwright.text;

import rungwright.program.Repeat;

/** How often a rule must be met: {@code 2 sessions in a row}, {@code 2 of the last 3 sessions here}. */
final class RepeatText {
    private RepeatText() {
    }

    /** Of one that must be met more than once. */
    static String of(Repeat repeat) {
        return repeat.row() ? repeat.met() + " sessions in a row"
                : repeat.met() + " of the last " + repeat.of() + " sessions here";
    }
}
