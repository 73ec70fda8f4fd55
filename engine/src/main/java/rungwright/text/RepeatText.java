package rungwright.text;

import rungwright.program.Repeat;

/** How often a rule must be met: {@code 2 sessions in a row}, {@code 2 of the last 3 sessions here}. */
final class RepeatText {
    private RepeatText() {
    }

    /** Of one that must be met more than once, in English. */
    static String of(Repeat repeat) {
        return of(repeat, Wording.ENGLISH.rules());
    }

    /** Of one that must be met more than once. */
    static String of(Repeat repeat, Words rules) {
        return repeat.row() ? rules.say("repeat.row", Integer.toString(repeat.met()))
                : rules.say("repeat.window", Integer.toString(repeat.met()), Integer.toString(repeat.of()));
    }
}
